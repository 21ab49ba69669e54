import { initialPosition, type Position } from '../../chess/index.ts';
import type {
  Block,
  DiagramBlock,
  ExerciseBlock,
  ExerciseLine,
  PatternBlock,
} from '../../model/index.ts';
import type { PlainLine, PlainTag } from '../../movetext/index.ts';
import { stringsFor } from '../../strings/index.ts';
import { comment, linesOfTree } from './lines-of-tree.ts';
import { drawn, plainWords, type WordsContext } from './plain-words.ts';

/** What a block becomes in PGN: a game, or words in the text between games. */
export type BlockInPgn =
  | { readonly kind: 'words'; readonly words: string }
  | {
      readonly kind: 'game';
      readonly line: PlainLine;
      readonly position: Position;
      /** Tags that the author has pasted with the moves. */
      readonly tags: readonly PlainTag[];
      readonly result?: string | undefined;
    };

export function blockInPgn(block: Block, context: WordsContext): BlockInPgn {
  switch (block.kind) {
    case 'moves':
    case 'game': {
      const [root] = block.nodes;
      const before = root?.after.filter((item) => item.type === 'comment') ?? [];
      return {
        kind: 'game',
        line: linesOfTree(block.nodes, root?.children[0], before, context),
        position: root?.position ?? initialPosition,
        tags: Object.entries(block.tags).map(([name, value]) => ({ name, value })),
        result: block.result,
      };
    }
    case 'exercise':
      return exercise(block, context);
    case 'diagram':
      return { kind: 'words', words: diagramWords(block, context) };
    case 'pattern':
      return { kind: 'words', words: patternWords(block, context) };
  }
}

/** The answer is the main line; further answers, good moves and wrong ones are its variations. */
function exercise(block: ExerciseBlock, context: WordsContext): BlockInPgn {
  const strings = stringsFor(context.settings.language, context.settings.notation);
  const ask = plainWords(block.ask, context);
  const hints = block.hints.flatMap((hint, index) =>
    comment(`${strings.hint(index + 1, block.hints.length)}: ${plainWords(hint, context)}`),
  );
  const lineOf = (nodes: ExerciseLine, intro = ''): PlainLine => {
    const before = nodes[0]?.after.filter((item) => item.type === 'comment') ?? [];
    const line = linesOfTree(nodes, nodes[0]?.children[0], before, context);
    return { ...line, before: [...comment(intro), ...line.before] };
  };
  const [answer, ...answers] = block.answer;
  const main = answer ? lineOf(answer) : { before: [], moves: [] };
  const others = [
    ...answers.map((nodes) => lineOf(nodes)),
    ...block.also.map((nodes) => lineOf(nodes, strings.alsoGood)),
    ...block.wrong.map((nodes) => markedBad(lineOf(nodes, strings.notTheAnswer))),
  ].map((line) => ({ type: 'variation' as const, line }));
  const [first, ...rest] = main.moves;
  const line = {
    before: [...comment(ask), ...hints, ...main.before],
    moves: first ? [{ ...first, after: [...first.after, ...others] }, ...rest] : [],
  };
  return behindMoveBefore(block, line, context);
}

/** The move of the other side comes first, and the question behind it. */
function behindMoveBefore(
  { before, nodes, position = initialPosition }: ExerciseBlock,
  line: PlainLine,
  context: WordsContext,
): BlockInPgn {
  const start = nodes[before?.parent ?? -1]?.position;
  const [played] = before ? linesOfTree(nodes, before.index, [], context).moves : [];
  if (!start || !played) return { kind: 'game', line, position, tags: [] };
  const asked = { ...played, after: [...played.after, ...line.before] };
  const whole = { before: [], moves: [asked, ...line.moves] };
  return { kind: 'game', line: whole, position: start, tags: [] };
}

/** NAG 2 says "poor move", where no sign says so already; 1 to 6 are the signs of a move (10). */
function markedBad(line: PlainLine): PlainLine {
  const [first, ...rest] = line.moves;
  if (!first || first.glyphs.some(({ nag }) => nag >= 1 && nag <= 6)) return line;
  return { ...line, moves: [{ ...first, glyphs: [{ nag: 2 }, ...first.glyphs] }, ...rest] };
}

function diagramWords(block: DiagramBlock, context: WordsContext): string {
  const strings = stringsFor(context.settings.language, context.settings.notation);
  const arrows = block.arrows.map(({ meaning, from, to }) =>
    drawn(strings.letter.arrows[meaning], `${from}-${to}`),
  );
  return [
    plainWords(block.caption, context),
    ...(block.marks.length > 0 ? [drawn(strings.letter.marked, block.marks.join(' '))] : []),
    ...arrows,
    block.position ? `(FEN: ${block.position.fen})` : '',
  ]
    .filter((part) => part !== '')
    .join(' ');
}

/** Claims are left out here as everywhere in PGN. */
function patternWords(
  { title, placement, text, advice }: PatternBlock,
  context: WordsContext,
): string {
  const strings = stringsFor(context.settings.language, context.settings.notation);
  const moves = advice.map(({ san }) => san).join(` ${strings.patternOr} `);
  return [
    `${title} (${placement})`,
    plainWords(text, context),
    ...(moves === '' ? [] : [`${strings.patternAdvice} ${moves}`]),
  ]
    .filter((part) => part !== '')
    .join(' ');
}
