/** The texts of a chapter, each with the positions that it may speak of. */
import type { PhrasingContent, RootContent } from 'mdast';
import { type Block, type Chapter, type MoveNode, treesOf } from '../../model/index.ts';
import type { CourseView } from '../view/index.ts';
import type { Situation } from './forms/index.ts';
import type { Passage } from './passage.ts';
import {
  around,
  inChapter,
  linkedIn,
  mentionedIn,
  type NamedSituation,
  shownBy,
  situationAt,
  situationsOf,
} from './situations.ts';
import { type PlainText, plainText } from './text.ts';
import { frontText, titlesIn } from './titles.ts';

/** Every text of a chapter, in order: its title and summary first, a position's title behind the text that gives it. */
export function* passagesOf(chapter: Chapter, course: CourseView): Generator<Passage> {
  for (const nodes of chapter.frontTexts) yield frontText(nodes, chapter, course);
  for (const passage of passagesOfBody(chapter, course)) {
    yield passage;
    yield* titlesIn(passage.text, chapter, course);
  }
}

function* passagesOfBody(chapter: Chapter, course: CourseView): Generator<Passage> {
  const { file, blocks } = chapter;
  let shown: NamedSituation | undefined;
  let last = -1;
  const between = (from: number, to: number) =>
    function* (): Generator<Situation> {
      for (const block of blocks.slice(Math.max(0, from), to + 1))
        yield* situationsOf(block, course);
    };
  function* visit(nodes: readonly RootContent[], isNote: boolean): Generator<Passage> {
    for (const node of nodes) {
      if (node.type === 'courseBlock') {
        const block = blocks[node.block];
        if (!block) continue;
        last = node.block;
        yield* passagesOfBlock(block, chapter, course);
        shown = shownBy(block, course) ?? shown;
      } else if (node.type === 'paragraph' || node.type === 'heading' || node.type === 'tableRow') {
        const text = plainText(node.children, file);
        const wide = isNote || node.type !== 'paragraph';
        const before = shown ?? (node.type === 'heading' ? inChapter(chapter, course) : undefined);
        const mentioned = mentionedIn(text, chapter, course);
        const [from, to] = wide ? [0, blocks.length] : [last - 1, last + 1];
        yield {
          text,
          kind: node.type === 'heading' ? 'heading' : node.type === 'tableRow' ? 'row' : 'prose',
          ...(before && { shown: before }),
          loose: true,
          near: function* () {
            yield* mentioned();
            yield* linkedIn(text, course);
            yield* between(from, to)();
          },
          takesClaims: node.type === 'paragraph' && !isNote && text.moves.length === 0,
        };
        if (text.moves.length > 0) shown = [...mentioned()].at(-1) ?? shown;
      } else if ('children' in node) {
        yield* visit(node.children as RootContent[], isNote || node.type === 'footnoteDefinition');
      }
    }
  }
  yield* visit(chapter.body.children, false);
}

function* passagesOfBlock(block: Block, chapter: Chapter, course: CourseView): Generator<Passage> {
  for (const tree of treesOf(block)) {
    for (const node of tree) {
      for (const item of node.after) {
        if (item.type === 'comment') yield commentOn(node.index, item.content, false);
        else {
          for (const comment of item.before) {
            yield commentOn(tree[item.first]?.parent ?? node.index, comment.content, true);
          }
        }
      }
    }
    function commentOn(
      index: number,
      content: readonly PhrasingContent[],
      isBefore: boolean,
    ): Passage {
      const text = plainText(content, fileOf(tree, block, chapter));
      const shown = situationAt(tree, index, block, course);
      const mentioned = mentionedIn(text, chapter, course);
      const isStart = index === 0;
      return {
        text,
        kind: 'comment',
        ...(shown && { shown }),
        loose: isBefore || isStart,
        near: function* () {
          yield* mentioned();
          yield* linkedIn(text, course);
          yield* around(tree, index, block, course);
        },
        takesClaims: block.kind === 'moves' && !isBefore && text.moves.length === 0,
      };
    }
  }
  if (block.kind !== 'diagram' && block.kind !== 'exercise') return;
  const texts = block.kind === 'diagram' ? [block.caption] : [block.ask, ...block.hints];
  const shown = shownBy(block, course);
  const kind = block.kind === 'diagram' ? 'caption' : 'question';
  const nearText = function* (text: PlainText): Generator<Situation> {
    yield* mentionedIn(text, chapter, course)();
    yield* linkedIn(text, course);
    yield* situationsOf(block, course);
  };
  for (const content of texts) {
    const text = plainText(content, chapter.file);
    if (text.text === '') continue;
    yield {
      text,
      kind,
      ...(shown && { shown }),
      loose: kind === 'question',
      near: () => nearText(text),
      takesClaims: false,
    };
  }
  if (block.kind === 'diagram' && block.alt !== undefined) {
    const text = { ...plainText([], chapter.file), text: block.alt };
    yield {
      text,
      kind,
      ...(shown && { shown }),
      loose: false,
      near: () => nearText(text),
      place: block.place,
      takesClaims: false,
    };
  }
}

/** A game's comments stand in the game's own file. */
function fileOf(tree: readonly MoveNode[], block: Block, chapter: Chapter): string {
  const written = tree.find((node) => node.written)?.written?.place.file;
  return block.kind === 'game' ? (written ?? block.file) : chapter.file;
}
