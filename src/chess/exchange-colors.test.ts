import { expect, test } from 'vitest';
import { exchangeColors, exchangeRanks } from './exchange-colors.ts';
import { isMoveFault, playMove } from './play.ts';
import { legalMoves } from './rules.ts';

const spanish = 'r1bqkbnr/pppp1ppp/2n5/1B2p3/4P3/5N2/PPPP1PPP/RNBQK2R b KQkq - 3 3';

test('every piece, right and square is the other side’s', () => {
  expect(exchangeColors({ fen: '4k2r/8/8/8/3pP3/8/8/R3K3 b Qk e3 0 7' }).fen).toBe(
    'r3k3/8/8/3Pp3/8/8/8/4K2R w Kq e6 0 7',
  );
});

test('twice is the position itself', () => {
  expect(exchangeColors(exchangeColors({ fen: spanish })).fen).toBe(spanish);
});

test('the moves are the same moves, upside down', () => {
  const position = { fen: spanish, key: spanish.split(' ').slice(0, 4).join(' ') };
  const exchanged = exchangeColors(position);
  expect(legalMoves(exchanged).sort()).toEqual(legalMoves(position).map(exchangeRanks).sort());
  const [here, there] = [playMove(position, 'a6'), playMove(exchanged, 'a3')];
  if (isMoveFault(here) || isMoveFault(there)) throw new Error('a pawn could not move');
  expect(exchangeColors(here.after).key).toBe(there.after.key);
});
