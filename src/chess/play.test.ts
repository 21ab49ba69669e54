import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { runs } from '../../tests/setup/runs.ts';
import { isFenFault, parseFen } from './fen.ts';
import { initialPosition } from './initial.ts';
import { isMoveFault, playMove } from './play.ts';
import { isMate, isStalemate, legalMoves } from './rules.ts';
import type { Position } from './types.ts';

function at(fen: string): Position {
  const position = parseFen(fen);
  if (isFenFault(position)) throw new Error(position.reason);
  return position;
}

/** The canonical SAN of a move, or why it cannot be played. */
function san(fen: string, written: string): string {
  const played = playMove(at(fen), written);
  return isMoveFault(played) ? `${played.kind}: ${played.reason}` : played.san;
}

describe('the result', () => {
  test('of a move', () => {
    expect(playMove(initialPosition, 'e4')).toEqual({
      san: 'e4',
      from: 'e2',
      to: 'e4',
      color: 'white',
      number: 1,
      after: {
        fen: 'rnbqkbnr/pppppppp/8/8/4P3/8/PPPP1PPP/RNBQKBNR b KQkq - 0 1',
        key: 'rnbqkbnr/pppppppp/8/8/4P3/8/PPPP1PPP/RNBQKBNR b KQkq -',
      },
    });
  });

  test('of a promotion by Black', () => {
    expect(playMove(at('4k3/8/8/8/8/8/p7/6K1 b - - 3 40'), 'a1=N')).toEqual({
      san: 'a1=N',
      from: 'a2',
      to: 'a1',
      promotion: 'knight',
      color: 'black',
      number: 40,
      after: { fen: '4k3/8/8/8/8/8/8/n5K1 w - - 0 41', key: '4k3/8/8/8/8/8/8/n5K1 w - -' },
    });
  });

  test('is the same object for the same position and spelling', () => {
    expect(playMove({ ...initialPosition }, 'd4')).toBe(playMove(initialPosition, 'd4'));
  });

  test('does not depend on what was played before', () => {
    const first = playMove(at('4k3/8/8/8/8/8/4P3/4K3 w - - 0 1'), 'e4');
    playMove(initialPosition, 'Nf3');
    playMove(initialPosition, 'Nf9');
    expect(playMove(at('4k3/8/8/8/8/8/4P3/4K3 w - - 0 9'), 'e4')).toMatchObject({ number: 9 });
    expect(playMove(at('4k3/8/8/8/8/8/4P3/4K3 w - - 0 1'), 'e4')).toEqual(first);
  });
});

describe('SAN of the PGN standard', () => {
  // 8.2.3.3
  test('castling is written with the letter O', () => {
    const fen = 'r3k2r/8/8/8/8/8/8/R3K2R w KQkq - 0 1';
    expect(san(fen, 'O-O')).toBe('O-O');
    expect(san(fen, 'O-O-O')).toBe('O-O-O');
  });
  test('en passant has no mark', () => {
    expect(san('4k3/8/8/3pP3/8/8/8/4K3 w - d6 0 1', 'exd6')).toBe('exd6');
  });
  test('a promotion has an equals sign', () => {
    for (const piece of 'NBRQ') {
      expect(san('8/5P2/8/8/8/8/k7/4K3 w - - 0 1', `f8=${piece}`)).toBe(`f8=${piece}`);
    }
  });
  // 8.2.3.4, with the standard's own example: knights on c3 and g1, and a bishop on b4 that pins.
  test('disambiguation counts legal moves only', () => {
    const pinned = '4k3/8/8/8/1b6/2N5/8/4K1N1 w - - 0 1';
    expect(san(pinned, 'Ne2')).toBe('Ne2');
    expect(san(pinned, 'Nge2')).toBe('Ne2');
    const free = '4k3/8/8/8/8/2N5/8/4K1N1 w - - 0 1';
    expect(san(free, 'Nce2')).toBe('Nce2');
    expect(san(free, 'Nge2')).toBe('Nge2');
    expect(san(free, 'Ne2')).toMatch(/^ambiguous/);
  });
  test('first the file, then the rank, then both', () => {
    const queens = '8/8/8/k7/4Q2Q/8/8/1K5Q w - - 0 1';
    expect(legalMoves(at(queens)).filter((move) => move.includes('e1'))).toEqual([
      'Qee1+',
      'Qh4e1+',
      'Q1e1+',
    ]);
  });
  // 8.2.3.5
  test('check and mate are marked, and play no part in telling moves apart', () => {
    expect(san('7k/8/8/8/8/8/8/R5RK w - - 0 1', 'Ra8')).toBe('Ra8+');
    expect(san('7k/8/8/8/8/8/1R6/R6K w - - 0 1', 'Rb7')).toBe('Rb7');
    expect(san('7k/1R6/8/8/8/8/8/R6K w - - 0 1', 'Ra8')).toBe('Ra8#');
  });
  // 8.2.3.6 (from memory): the longest moves have seven characters.
  test('long moves', () => {
    expect(san('Q5K1/1p6/Q1Q5/8/7k/8/8/8 w - - 0 1', 'Qa6xb7')).toBe('Qa6xb7');
    expect(san('8/8/8/8/7K/8/5p2/4k1N1 b - - 0 1', 'fxg1=Q')).toBe('fxg1=Q');
  });
});

describe('spellings of authors', () => {
  const castling = 'r3k2r/8/8/8/8/8/8/R3K2R w KQkq - 0 1';
  const knights = '4k3/8/8/8/8/2N5/8/4K1N1 w - - 0 1';
  const pawn = '8/5P2/8/8/8/8/k7/4K3 w - - 0 1';
  const passant = '4k3/8/8/3pP3/8/8/8/4K3 w - d6 0 1';
  const initial = initialPosition.fen;

  test.each([
    // Zeros stand in the sample game of the FIDE Laws, appendix C.
    ['zeros', castling, '0-0', 'O-O'],
    ['zeros, long', castling, '0-0-0', 'O-O-O'],
    ['en dashes', castling, '0–0–0', 'O-O-O'],
    ['small letters', castling, 'o-o', 'O-O'],
    ["the king's squares", castling, 'e1g1', 'O-O'],
    ["the king's squares, long", castling, 'Ke1-c1', 'O-O-O'],
    ['a false check', initial, 'e4+', 'e4'],
    ['a false mate', initial, 'Nf3#', 'Nf3'],
    ['two plus signs', castling, 'Rxa8++', 'Rxa8+'],
    ['a missing check', castling, 'Rxa8', 'Rxa8+'],
    ['a suffix', initial, 'e4!?', 'e4'],
    ['check and suffix', castling, 'Rxa8+!', 'Rxa8+'],
    ['a needless file', initial, 'Ngf3', 'Nf3'],
    ['a needless rank', initial, 'N1f3', 'Nf3'],
    ['a needless square', initial, 'Ng1f3', 'Nf3'],
    ['more than is needed', knights, 'Ng1e2', 'Nge2'],
    ['long algebraic', initial, 'Ng1-f3', 'Nf3'],
    ['long algebraic, en dash', initial, 'e2–e4', 'e4'],
    ['long algebraic, capture', castling, 'Ra1xa8+', 'Rxa8+'],
    ['long algebraic, pawn captures', passant, 'e5xd6 e.p.', 'exd6'],
    ['two squares', initial, 'e2e4', 'e4'],
    ['two squares of a piece', initial, 'g1f3', 'Nf3'],
    ['two squares, capture', passant, 'e5d6', 'exd6'],
    ['two squares, promotion', pawn, 'f7f8q', 'f8=Q'],
    // FIDE Laws, appendix C: the promoted piece follows at once; `e.p.` may be added.
    ['promotion without a sign', pawn, 'f8Q', 'f8=Q'],
    ['promotion in brackets', pawn, 'f8(N)', 'f8=N'],
    ['promotion with a stroke', pawn, 'f8/R', 'f8=R'],
    ['e.p.', passant, 'exd6 e.p.', 'exd6'],
    ['e.p. without a space', passant, 'exd6e.p.', 'exd6'],
    ['ep', passant, 'exd6 ep', 'exd6'],
    ['a white figurine', initial, '♘f3', 'Nf3'],
    ['a black figurine', initial, '♞f3', 'Nf3'],
    ['a figurine with a variation selector', initial, '♘\ufe0ef3', 'Nf3'],
    ['a pawn figurine', initial, '♙e4', 'e4'],
    ['a promotion to a figurine', pawn, 'f8=♕', 'f8=Q'],
    ['a pawn letter', initial, 'Pe4', 'e4'],
    ['a multiplication sign', castling, 'R×a8', 'Rxa8+'],
    ['a colon', castling, 'R:a8', 'Rxa8+'],
    ['spaces around', initial, ' e4 ', 'e4'],
  ])('%s', (_, fen, written, canonical) => {
    expect(san(fen, written)).toBe(canonical);
  });

  test('a bishop is no b-pawn', () => {
    const fen = '4k3/8/8/8/2p5/1P6/8/4KB2 w - - 0 1';
    expect(san(fen, 'bxc4')).toBe('bxc4');
    expect(san(fen, 'Bxc4')).toBe('Bxc4');
  });
});

// Positions on which libraries differ or that are easy to get wrong; each verdict follows from
// the FIDE Laws, 3.1, 3.7 and 3.8, and was found the same by chess.js and chessops.
describe('hard positions', () => {
  test.each([
    ['en passant opens the rank', '8/8/8/8/k2Pp2Q/8/8/3K4 b - d3 0 1', 'exd3', false],
    ['en passant along a pin', '8/8/8/1k6/2pP4/8/4B3/4K3 b - d3 0 1', 'cxd3', true],
    ['en passant evades check', '8/8/8/2k5/2pP4/8/8/4K3 b - d3 0 1', 'cxd3', true],
    ['castling through check', '4k3/8/8/8/8/8/5r2/R3K2R w KQ - 0 1', 'O-O', false],
    [
      'castling over a square that a pinned rook attacks',
      '8/6k1/5r2/4B3/8/8/8/4K2R w K - 0 1',
      'O-O',
      false,
    ],
    ['castling with b1 attacked', '1r2k3/8/8/8/8/8/8/R3K3 w Q - 0 1', 'O-O-O', true],
  ])('%s', (_, fen, written, legal) => {
    expect(isMoveFault(playMove(at(fen), written))).toBe(!legal);
  });

  test('a null move is refused', () => {
    for (const written of ['--', 'Z0', '0000']) {
      expect(playMove(initialPosition, written)).toEqual({
        kind: 'illegal',
        reason: 'this stands for passing, and nobody may pass',
        meant: [],
      });
    }
  });

  test('mate and stalemate', () => {
    const mate = at('r1bqkb1r/pppp1Qpp/2n2n2/4p3/2B1P3/8/PPPP1PPP/RNB1K1NR b KQkq - 0 4');
    expect([isMate(mate), isStalemate(mate), legalMoves(mate)]).toEqual([true, false, []]);
    const stalemate = at('7k/5Q2/6K1/8/8/8/8/8 b - - 0 1');
    expect([isMate(stalemate), isStalemate(stalemate)]).toEqual([false, true]);
    expect([isMate(initialPosition), isStalemate(initialPosition)]).toEqual([false, false]);
  });
});

/** Text that looks more or less like a move. */
const nearlyMove = fc.oneof(
  fc.string({ maxLength: 8 }),
  fc.stringMatching(/^[KQRBNPSLTDo0]?[a-i]?[0-9]?[x:-]?[a-i][0-9](=?[QRBNK])?[+#]?[!?]?$/),
);

test('any text gives a move, or a fault of one clause that proposes legal moves', () => {
  const positions = [
    initialPosition,
    at('r3k2r/p1ppqpb1/bn2pnp1/3PN3/1p2P3/2N2Q1p/PPPBBPPP/R3K2R w KQkq - 0 1'),
    at('rnbq1k1r/pp1Pbppp/2p5/8/2B5/8/PPP1NnPP/RNBQK2R w KQ - 1 8'),
    at('4k3/8/8/3pP3/8/8/8/4K3 w - d6 0 1'),
  ];
  fc.assert(
    fc.property(fc.constantFrom(...positions), nearlyMove, (position, written) => {
      const legal = legalMoves(position);
      const played = playMove(position, written);
      if (!isMoveFault(played)) {
        expect(legal).toContain(played.san);
        return;
      }
      expect(played.reason).toMatch(/[^.\s]$/);
      expect(played.reason).not.toMatch(/undefined|piece on/);
      expect(played.meant.length).toBeLessThanOrEqual(4);
      for (const move of played.meant) expect(legal).toContain(move);
    }),
    { numRuns: runs(2000), seed: 19940312 },
  );
});
