import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runs } from '../../../tests/setup/runs.ts';
import { initialPosition, listMoves, parseFen, playMove } from '../../chess/index.ts';
import { applyMove } from './apply-move.ts';

const letters = { queen: 'q', rook: 'r', bishop: 'b', knight: 'n', king: '', pawn: '' } as const;

test('moves as the rules do, in random games from the start and where pawns and kings are special', () => {
  const special = [
    'r3k2r/ppp1qppp/8/3pP3/8/8/PPP2PPP/R3K2R w KQkq d6 0 10',
    '8/P5k1/8/8/8/8/p5K1/8 w - - 0 1',
  ].map((fen) => parseFen(fen));
  fc.assert(
    fc.property(
      fc.constantFrom(initialPosition, ...special),
      fc.array(fc.nat(), { maxLength: 60 }),
      (start, choices) => {
        if ('reason' in start) throw new Error(start.reason);
        let position = start;
        let placement = start.fen.replace(/ .*/, '');
        for (const choice of choices) {
          const sans = listMoves(position).map((move) =>
            typeof move === 'string' ? move : move.san,
          );
          const san = sans[choice % (sans.length || 1)];
          if (san === undefined) break;
          const played = playMove(position, san);
          if ('reason' in played) throw new Error(played.reason);
          const promoted = played.promotion ? letters[played.promotion] : '';
          placement = applyMove(placement, played.from + played.to + promoted) ?? '';
          position = played.after;
          expect(placement).toBe(position.fen.replace(/ .*/, ''));
        }
      },
    ),
    { numRuns: runs(60) },
  );
});

test('what is no move, or moves nothing, gives nothing', () => {
  const start = initialPosition.fen;
  for (const move of ['', 'e4', 'e2e9', 'e4e5', 'O-O'])
    expect(applyMove(start, move)).toBeUndefined();
});
