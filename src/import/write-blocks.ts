import {
  makeMovetext,
  type PlainComment,
  type PlainLine,
  type PlainMovetext,
  type PlainVariation,
} from '../movetext/index.ts';
import { codeMarkdown, commentMarkdown, paragraphMarkdown, textBlock } from './markdown-text.ts';
import type { DraftComment, DraftGame, DraftLine, DraftVariation } from './types.ts';

/** A piece of a chapter, and the moves that lead to it. */
export interface DraftBlock {
  readonly text: string;
  readonly line: DraftLine;
  /** Whether it is the game itself, not a variation that has a block of its own. */
  readonly isMain: boolean;
}

export interface BlockOptions {
  /** Gives a name to a position that has none yet. */
  readonly nextLabel: () => string;
  /** Variations that get blocks of their own. */
  readonly apart?: ReadonlySet<DraftLine> | undefined;
}

/** A chapter may have 1 MB, and signs take up to three bytes. */
const largest = 250_000;

/** How deep variations may be nested in a block; less where a block would be too long. */
const depths = [40, 8, 3, 1, 0];

/**
 * A game as blocks of `moves`: one, and one more for each variation that is nested too deep, or
 * that would make the block too long. Such a block starts at a name that the position is given.
 */
export function writeBlocks(game: DraftGame, options: BlockOptions): DraftBlock[] {
  const { line, unread } = game;
  if (unread !== undefined || line.moves.length === 0) {
    const words = line.before.map(({ text }) => paragraphMarkdown(text));
    const text = unread === undefined ? words.join('\n\n') : textBlock(unread);
    return text === '' ? [] : [{ text, line, isMain: true }];
  }
  // What is written later may name a place in what was written before: texts are made last.
  const makers: (() => DraftBlock)[] = [];
  const open: { readonly line: DraftLine; readonly label?: string }[] = [{ line }];
  for (let at = 0; at < open.length; at++) {
    const { line: own, label } = open[at] as (typeof open)[number];
    const depth = depths.find((each) => sizeOf(own, each, options) <= largest) ?? 0;
    const isMain = label === undefined;
    makers.push(() => ({
      text: blockText(game, own, { depth, label, options }),
      line: own,
      isMain,
    }));
    for (const variation of apartOf(own, depth, options)) {
      const name = variation.from.labels[0] ?? options.nextLabel();
      if (variation.from.labels.length === 0) variation.from.labels.push(name);
      open.push({ line: variation, label: name });
    }
  }
  return makers.map((make) => make());
}

/** About how long a line is in a block, in UTF-16 units. */
function sizeOf(line: DraftLine, depth: number, options: BlockOptions): number {
  let size = 0;
  const count = (comments: readonly DraftComment[]) => {
    for (const { text } of comments) size += text.length + 3;
  };
  count(line.before);
  for (const { after } of line.moves) {
    size += 10;
    count(after.filter((item) => item.type === 'comment'));
    for (const item of after) {
      if (item.type === 'comment' || depth === 0 || options.apart?.has(item.line)) continue;
      size += sizeOf(item.line, depth - 1, options);
    }
  }
  return size;
}

/** The outermost variations that do not stand in the block of their line. */
function apartOf(line: DraftLine, depth: number, options: BlockOptions): DraftLine[] {
  return line.moves.flatMap(({ after }) =>
    after
      .filter((item): item is DraftVariation => item.type === 'variation')
      .filter(({ line: inner }) => inner.moves.length > 0)
      .flatMap(({ line: inner }) =>
        depth === 0 || options.apart?.has(inner) ? [inner] : apartOf(inner, depth - 1, options),
      ),
  );
}

/** A whole game for a block of its own, with all its variations. */
export function plainGame({ tags, line, result }: DraftGame): PlainMovetext {
  const ended = result === undefined ? {} : { result: { text: result } };
  return { tags, line: { ...plainLine(line, depths[0] ?? 0, noNames), ...ended } };
}

const noNames: BlockOptions = { nextLabel: () => '' };

interface BlockForm {
  readonly depth: number;
  readonly label: string | undefined;
  readonly options: BlockOptions;
}

function blockText(game: DraftGame, line: DraftLine, { depth, label, options }: BlockForm): string {
  const isMain = label === undefined;
  const plain = plainLine(line, depth, options);
  const names = isMain ? nameComments(line.from.labels) : [];
  const first = line.moves[0];
  const moves = makeMovetext(
    {
      tags: isMain ? game.tags : [],
      line: {
        ...plain,
        before: [...names, ...plain.before],
        ...(isMain && game.result !== undefined ? { result: { text: game.result } } : {}),
      },
    },
    first && { number: first.number, color: first.color },
  );
  return `\`\`\`moves${isMain ? '' : ` from="${label}"`}\n${moves}\`\`\``;
}

function plainLine(line: DraftLine, depth: number, options: BlockOptions): PlainLine {
  return {
    before: line.before.map(plainComment),
    moves: line.moves.map(({ san, glyphs, labels, after }) => ({
      san: { text: san },
      glyphs,
      after: [
        ...nameComments(labels),
        ...after.flatMap((item): (PlainComment | PlainVariation)[] => {
          if (item.type === 'comment') return [plainComment(item)];
          // Of a variation whose first move cannot be played only its words are left.
          if (item.line.moves.length === 0) return item.line.before.map(plainComment);
          if (depth === 0 || options.apart?.has(item.line)) return [];
          return [{ type: 'variation', line: plainLine(item.line, depth - 1, options) }];
        }),
      ],
    })),
  };
}

function plainComment({ text, isUnread }: DraftComment): PlainComment {
  const written = isUnread ? codeMarkdown(text) : commentMarkdown(text);
  return { type: 'comment', form: 'brace', text: written };
}

function nameComments(labels: readonly string[]): PlainComment[] {
  return labels.map((label) => ({ type: 'comment', form: 'brace', text: `:here[${label}]` }));
}
