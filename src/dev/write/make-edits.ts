import type { ChangeToWrite, MoveToWrite, WordsToWrite } from '../../contract/index.ts';
import { applyFixes } from '../../diagnostics/index.ts';
import {
  addAnswer,
  addLine,
  drawAt,
  type Edits,
  type NewDirective,
  type NewMove,
  type NewWords,
  sayAt,
  setGlyph,
} from '../../edit/index.ts';
import { type ChapterSyntax, isLabel, labelHint, readChapter } from '../../read/index.ts';
import { DeskRefusal } from '../desk-door.ts';
import type { PlaceInCourse } from './find-place.ts';
import { refusedName } from './refused-name.ts';

/**
 * What a change is in the chapter's text.
 * @throws EditRefusedError, DeskRefusal
 */
export function editsFor(place: PlaceInCourse, change: ChangeToWrite): Edits {
  const { chapter, text, block, node } = place;
  const written = { chapter, text };
  const at = { block: block.key, node: node?.index ?? 0 };
  switch (change.kind) {
    case 'line':
      return addLine(written, at, change.moves.map(newMove));
    case 'words':
      return sayAt(written, at, newWords(change));
    case 'glyph':
      return setGlyph(written, at, change.nag);
    case 'draw':
      return drawAt(written, at, { kind: change.draw, item: change.item });
    case 'answer':
      return addAnswer(written, block.key, change.list, change.moves.map(newMove));
  }
}

function newMove({ san, glyphs, option, ...words }: MoveToWrite): NewMove {
  const { directives = [], comment } = newWords(words);
  const alternative: NewDirective[] = option ? [{ name: 'option', argument: '' }] : [];
  return { san, glyphs, comment, directives: [...alternative, ...directives] };
}

function newWords({ comment, name, title, same, claims = [], drawn = [] }: WordsToWrite): NewWords {
  const directives: NewDirective[] = [];
  if (name) {
    if (!isLabel(name)) throw refusedName(`“${name}” is no name for a position. ${labelHint}`);
    // Within a title only curly quotation marks may stand.
    const shown = (title ?? '').replace(/\s+/g, ' ').trim().replaceAll('"', '”');
    directives.push({ name: 'here', argument: shown === '' ? name : `${name} "${shown}"` });
  }
  if (same) directives.push({ name: 'same', argument: same });
  for (const argument of claims) directives.push({ name: 'claim', argument });
  for (const kind of ['mark', 'plan', 'threat', 'guard'] as const) {
    const items = drawn.filter((each) => each.kind === kind).map(({ item }) => item);
    if (items.length > 0) directives.push({ name: kind, argument: items.join(' ') });
  }
  return { directives, comment };
}

/**
 * The chapter's text with edits made, read once more before anybody sees it.
 * @throws DeskRefusal where it would not be read as what was meant.
 */
export function editedText({ chapter, text, block }: PlaceInCourse, edits: Edits, added: number) {
  const now = applyFixes(text, edits);
  const read = (content: string) =>
    readChapter(
      { path: chapter.file, text: content },
      { media: new Set(), pieces: chapter.pieces },
    );
  const [before, after] = [read(text), read(now)];
  const [fresh] = after.problems.slice(before.problems.length);
  if (fresh !== undefined) {
    throw new DeskRefusal(`That could not be read again: ${fresh.message} ${fresh.hint}`);
  }
  const index = chapter.blocks.indexOf(block);
  const isMeant =
    after.blocks.length === before.blocks.length &&
    after.blocks.every((each, at) =>
      at === index
        ? countMoves(each) === countMoves(before.blocks[at]) + added
        : each.key === before.blocks[at]?.key,
    );
  if (isMeant) return now;
  throw new DeskRefusal('That would be read as something else. Write it in the file itself.');
}

function countMoves(block: ChapterSyntax['blocks'][number] | undefined): number {
  switch (block?.kind) {
    case 'moves':
      return block.moves.nodes.length;
    case 'game':
      return block.moves?.nodes.length ?? 0;
    case 'exercise':
      return [...block.answer, ...block.also, ...block.wrong].reduce(
        (sum, { nodes }) => sum + nodes.length - 1,
        0,
      );
    default:
      return 0;
  }
}
