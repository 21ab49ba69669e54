/** The quick board of replays against chess.js, which judges all other moves. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { runs } from '../../tests/setup/runs.ts';
import {
  createReplay,
  initialPosition,
  isFenFault,
  isMoveFault,
  legalMoves,
  PositionIndex,
  parseFen,
  playMove,
} from './index.ts';

/** Positions with castling, promotion, en passant that is and is not legal (tests/chess/perft-tables.ts). */
const starts = [
  initialPosition.fen,
  'r3k2r/p1ppqpb1/bn2pnp1/3PN3/1p2P3/2N2Q1p/PPPBBPPP/R3K2R w KQkq - 0 1',
  '8/2p5/3p4/KP5r/1R3p1k/8/4P1P1/8 w - - 0 1',
  'r3k2r/Pppp1ppp/1b3nbN/nP6/BBP1P3/q4N2/Pp1P2PP/R2Q1RK1 w kq - 0 1',
  'rnbq1k1r/pp1Pbppp/2p5/8/2B5/8/PPP1NnPP/RNBQK2R w KQ - 1 8',
];

function positionOf(fen: string) {
  const position = parseFen(fen);
  if (isFenFault(position)) throw new Error(position.reason);
  return position;
}

describe('a replay', () => {
  test('comes to the same positions as playMove', () => {
    const choices = fc.array(fc.nat(), { maxLength: 60 });
    fc.assert(
      fc.property(fc.constantFrom(...starts), choices, (fen, chosen) => {
        let position = positionOf(fen);
        const replay = createReplay(position);
        expect(replay.key()).toBe(position.key);
        for (const choice of chosen) {
          const moves = legalMoves(position);
          const san = moves[choice % moves.length];
          if (san === undefined) return;
          const played = playMove(position, san);
          if (isMoveFault(played)) throw new Error(played.reason);
          position = played.after;
          expect(replay.play(san), san).toBe(undefined);
          expect(replay.key(), san).toBe(position.key);
        }
      }),
      { numRuns: runs(60) },
    );
  });

  test('finds its position among others by its key alone, and gives earlier keys', () => {
    const board = createReplay(initialPosition);
    const keys = [board.key()];
    const moves = ['e4', 'Nf6', 'e5', 'd5', 'exd6', 'Ng8', 'Nf3', 'Rg8'];
    for (const move of moves.slice(0, -1)) {
      expect(board.play(move)).toBe(undefined);
      keys.push(board.key());
    }
    expect(board.play('Rg8')).toMatchObject({ kind: 'illegal' });
    expect([6, 5, 0].map((count) => board.keyAfter(count))).toEqual([keys[6], keys[5], keys[0]]);
    expect(board.key()).toBe(keys[7]);
    // The same pieces and side, but without the capture in passing, and without rights to castle.
    const near = [keys[4]?.replace('d6', '-') ?? '', keys[7]?.replace('KQkq', 'KQk') ?? ''];
    const index = new PositionIndex([...near, ...keys, keys[0] ?? '']);
    const again = createReplay(initialPosition);
    expect(again.placeIn(index)).toBe(2);
    for (const [ply, move] of moves.slice(0, -1).entries()) {
      again.play(move);
      expect(again.placeIn(index)).toBe(ply + 3);
      expect(again.placeIn(new PositionIndex(near))).toBe(undefined);
    }
  });

  test('reads every spelling that playMove reads', () => {
    const replay = createReplay(initialPosition);
    const moves = ['e2-e4', 'e5', 'Ng1f3', '♞c6', 'Bc4+', 'Nf6', '0-0', 'Nxe4', 'Rfe1', 'd5'];
    expect(moves.map((move) => replay.play(move))).toEqual(moves.map(() => undefined));
    expect(replay.key()).toBe('r1bqkb1r/ppp2ppp/2n5/3pp3/2B1n3/5N2/PPPP1PPP/RNBQR1K1 w kq -');
  });

  test.each([
    ['e5', 'illegal'],
    ['Nd2', 'illegal'],
    ['Nxf3', 'illegal'],
    ['O-O', 'illegal'],
    ['--', 'illegal'],
    ['Ke9', 'unreadable'],
  ])('refuses %s as playMove does, and nothing is changed', (move, kind) => {
    const replay = createReplay(initialPosition);
    expect(replay.play(move)).toEqual(playMove(initialPosition, move));
    expect(replay.play(move)).toMatchObject({ kind });
    expect(replay.key()).toBe(initialPosition.key);
  });

  test('an ambiguous move is refused with what it could be', () => {
    const replay = createReplay(positionOf('4k3/8/8/8/8/8/8/R3K2R w - - 0 1'));
    expect(replay.play('Rd1')).toBe(undefined);
    const both = createReplay(positionOf('4k3/8/8/8/8/4K3/8/R6R w - - 0 1'));
    expect(both.play('Rd1')).toMatchObject({ kind: 'ambiguous', meant: ['Rad1', 'Rhd1'] });
  });
});
