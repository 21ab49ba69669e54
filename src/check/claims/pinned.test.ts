import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runs } from '../../../tests/setup/runs.ts';
import {
  attackersOn,
  colors,
  kingOf,
  otherColor,
  type Position,
  readBoard,
  squaresOf,
} from '../../chess/index.ts';
import { isClaimFault, parseClaim } from './reading/parse-claim.ts';
import { randomPosition } from './testing/random-position.ts';

// Another way to say it: without the piece, its king would be attacked by one piece more.
test('a piece is pinned to its king exactly where taking it off uncovers an attack', () => {
  fc.assert(
    fc.property(randomPosition(80), (at) => {
      const board = readBoard(at);
      for (const color of colors) {
        const king = kingOf(board, color) ?? '';
        const before = attackersOn(board, king, otherColor(color)).length;
        for (const square of squaresOf(board, color)) {
          if (square === king) continue;
          const without = new Map(board);
          without.delete(square);
          const after = attackersOn(without, king, otherColor(color)).length;
          expect(isPinned(at, square), `${square} in ${at.fen}`).toBe(after > before);
        }
      }
    }),
    { numRuns: runs(60) },
  );
});

function isPinned(position: Position, square: string) {
  const claim = parseClaim(`pinned ${square}`);
  if (isClaimFault(claim)) throw new Error(claim.reason);
  const context = {
    position,
    side: 'white',
    covered: [],
    castlings: () => [],
    labelled: () => undefined,
  } as const;
  return claim.parts[0]?.judge(context).holds;
}
