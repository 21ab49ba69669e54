import fc from 'fast-check';
import { initialPosition, legalMoves, type Position, playMove } from '../../../src/chess/index.ts';
import { makeMovetext, type PlainLine, type PlainMove } from '../../../src/movetext/index.ts';

/** What a tree of legal moves is made from: which of the legal moves, and what stands behind it. */
interface Choice {
  readonly pick: number;
  readonly glyphs: readonly number[];
  readonly after: readonly (string | readonly Choice[])[];
}

/** Few moves to choose from, so that lines meet. */
const narrow = 6;

function choices(comment: fc.Arbitrary<string>): fc.Arbitrary<readonly Choice[]> {
  const { line } = fc.letrec<{ line: readonly Choice[]; choice: Choice }>((tie) => ({
    choice: fc.record({
      pick: fc.nat({ max: narrow - 1 }),
      glyphs: fc.oneof(
        { weight: 4, arbitrary: fc.constant([]) },
        fc.array(fc.integer({ min: 0, max: 255 }), { maxLength: 2 }),
      ),
      after: fc.oneof(
        { weight: 3, arbitrary: fc.constant([]) },
        fc.array(fc.oneof({ maxDepth: 3 }, comment, tie('line')), { maxLength: 2 }),
      ),
    }),
    line: fc.array(tie('choice'), { minLength: 1, maxLength: 7 }),
  }));
  return line;
}

function lineOf(list: readonly Choice[], start: Position): PlainLine {
  const moves: PlainMove[] = [];
  let position = start;
  for (const { pick, glyphs, after } of list) {
    const legal = legalMoves(position);
    const [before, chosen] = [position, legal[(pick * 7) % Math.max(1, legal.length)]];
    const played = chosen === undefined ? undefined : playMove(position, chosen);
    if (played === undefined || !('after' in played)) break;
    position = played.after;
    moves.push({
      san: { text: played.san },
      glyphs: glyphs.map((nag) => ({ nag })),
      after: after.flatMap((item): PlainMove['after'] => {
        if (typeof item === 'string') {
          return [{ type: 'comment', form: 'brace', text: item.replace(/[{}]/g, '') }];
        }
        const line = lineOf(item, before);
        return line.moves.length === 0 ? [] : [{ type: 'variation', line }];
      }),
    });
  }
  return { before: [], moves };
}

/** Movetext of legal moves, with comments and variations. */
export function legalMovetext(
  comment: fc.Arbitrary<string>,
  start: Position = initialPosition,
): fc.Arbitrary<string> {
  return choices(comment).map((list) =>
    makeMovetext({ tags: [{ name: 'FEN', value: start.fen }], line: lineOf(list, start) })
      .replace(/^\[FEN .*\n+/, '')
      .trim(),
  );
}
