/** Every kind of reason, on positions made for it. The rules behind them: FIDE Laws, article 3. */
import { describe, expect, test } from 'vitest';
import { isFenFault, parseFen } from '../fen.ts';
import { initialPosition } from '../initial.ts';
import { isMoveFault, playMove } from '../play.ts';

const initial = initialPosition.fen;

function fault(fen: string, written: string): string {
  const position = parseFen(fen);
  if (isFenFault(position)) throw new Error(position.reason);
  const played = playMove(position, written);
  if (!isMoveFault(played)) throw new Error(`${written} is ${played.san}`);
  return `${played.kind}: ${played.reason}`;
}

const italian = 'r1bqkbnr/pppp1ppp/2n5/4p3/2B1P3/5N2/PPPP1PPP/RNBQK2R b KQkq - 3 3';
const scandinavian = 'rnbqkbnr/ppp1pppp/8/3p4/4P3/8/PPPP1PPP/RNBQKBNR w KQkq - 0 2';
const rooks = 'r3k2r/8/8/8/8/8/8/R3K2R w KQkq - 0 1';

describe('the king (FIDE Laws, 3.9)', () => {
  test.each([
    [
      '4k3/8/8/8/1b6/2N5/8/4K1N1 w - - 0 1',
      'Ne4',
      'the knight on c3 is pinned to the king on e1 by the bishop on b4',
    ],
    [
      '4k3/8/8/8/1b6/2N5/8/4K1N1 w - - 0 1',
      'Nce2',
      'the knight on c3 is pinned to the king on e1 by the bishop on b4',
    ],
    ['4k3/4r3/8/8/8/8/4P3/3QK3 w - - 0 1', 'Qd2', undefined],
    [
      '4k3/8/8/8/7b/8/5P2/3QK3 w - - 0 1',
      'f4',
      'the pawn on f2 is pinned to the king on e1 by the bishop on h4',
    ],
    [
      '4k3/8/8/8/8/4r3/8/R3K2R w KQ - 0 1',
      'Ra8',
      'the king on e1 would stay in check from the rook on e3',
    ],
    [
      '4k3/8/8/8/8/2n1r3/8/RN2K3 w Q - 0 1',
      'Nxc3',
      'the king on e1 would stay in check from the rook on e3',
    ],
    [
      '4k3/8/8/8/8/8/5r2/R3K2R w KQ - 0 1',
      'Kf1',
      'on f1 the king would be in check from the rook on f2',
    ],
    [
      '4k3/8/8/8/4r3/8/8/4K3 w - - 0 1',
      'Ke2',
      'on e2 the king would be in check from the rook on e4',
    ],
    [
      '8/8/8/8/8/4k3/8/4K3 w - - 0 1',
      'Kd2',
      'on d2 the king would be in check from the king on e3',
    ],
    ['4k3/8/8/8/8/8/5r2/4K2b w - - 0 1', 'Kxf2', undefined],
    [
      '4k3/8/8/8/8/6b1/5r2/4K3 w - - 0 1',
      'Kxf2',
      'on f2 the king would be in check from the bishop on g3',
    ],
    [
      '8/8/8/8/k2Pp2Q/8/8/3K4 b - d3 0 1',
      'exd3',
      'taking en passant would open the king on a4 to the queen on h4',
    ],
    // Two knights, each held by its own pin.
    [
      '4r1k1/8/8/b7/8/2N5/4N3/4K3 w - - 0 1',
      'Nd4',
      'the knight on e2 is pinned to the king on e1 by the rook on e8',
    ],
    [
      '4r1k1/8/8/b7/8/2N5/4N3/4K3 w - - 0 1',
      'Nd5',
      'the knight on c3 is pinned to the king on e1 by the bishop on a5',
    ],
  ])('%s: %s', (fen, written, reason) => {
    if (reason === undefined) expect(() => fault(fen, written)).toThrow();
    else expect(fault(fen, written)).toBe(`illegal: ${reason}`);
  });

  test('each of two pieces has its reason', () => {
    const fen = '4r1k1/8/8/b7/8/2N5/4N3/4K3 w - - 0 1';
    expect(fault(fen, 'Ng1')).toMatch(/^illegal: the knight on e2 is pinned/);
    const both = '4r1k1/8/8/b7/4N3/8/3N4/4K3 w - - 0 1';
    expect(fault(both, 'Nf3')).toBe(
      'illegal: the knight on d2 is pinned to the king on e1 by the bishop on a5',
    );
    expect(fault('4r1k1/8/8/b7/4N3/2N5/8/4K3 w - - 0 1', 'Nd5')).toBe(
      'illegal: the knight on c3 is pinned to the king on e1 by the bishop on a5',
    );
    expect(fault('6k1/8/8/b3r3/8/2N1N3/8/4K3 w - - 0 1', 'Nd5')).toBe(
      'illegal: the knight on c3 is pinned to the king on e1 by the bishop on a5, ' +
        'and the knight on e3 is pinned to the king on e1 by the rook on e5',
    );
  });

  test('a game that is over', () => {
    expect(fault('7k/5Q2/6K1/8/8/8/8/8 b - - 0 1', 'Kg8')).toBe(
      'illegal: Black is stalemated, and the game is over',
    );
    const mate = 'r1bqkb1r/pppp1Qpp/2n2n2/4p3/2B1P3/8/PPPP1PPP/RNB1K1NR b KQkq - 0 4';
    expect(fault(mate, 'Kxf7')).toBe('illegal: Black is mated, and the game is over');
  });
});

describe('castling (FIDE Laws, 3.8)', () => {
  test.each([
    [initial, 'O-O', 'the bishop on f1 stands between the king and the rook on h1'],
    [initial, 'O-O-O', 'the queen on d1 stands between the king and the rook on a1'],
    [
      'rn2k3/8/8/8/8/8/8/4K3 b q - 0 1',
      'O-O-O',
      'the knight on b8 stands between the king and the rook on a8',
    ],
    [
      '4k3/8/8/8/8/8/8/R3K2R w - - 0 1',
      'O-O',
      'White has lost the right to castle kingside: the king or the rook on h1 has moved before',
    ],
    [
      'r3k2r/8/8/8/8/8/8/4K3 b k - 0 1',
      'O-O-O',
      'Black has lost the right to castle queenside: the king or the rook on a8 has moved before',
    ],
    ['4k3/8/8/8/8/8/8/R4K1R w - - 0 1', 'O-O', 'the king stands on f1, not on e1'],
    ['4k3/8/8/8/8/8/8/R3K3 w Q - 0 1', 'O-O', 'no white rook stands on h1'],
    ['4k3/8/8/8/8/4r3/8/R3K2R w KQ - 0 1', 'O-O', 'the king on e1 is in check from the rook on e3'],
    [
      '4k3/8/8/8/8/8/5r2/R3K2R w KQ - 0 1',
      'O-O',
      'the king would pass over f1, which is attacked by the rook on f2',
    ],
    [
      '4k3/8/8/8/8/6r1/8/R3K2R w KQ - 0 1',
      'O-O',
      'on g1 the king would be in check from the rook on g3',
    ],
    [
      '4k3/8/8/8/8/8/2r5/R3K3 w Q - 0 1',
      'O-O-O',
      'on c1 the king would be in check from the rook on c2',
    ],
    // FIDE Laws, 3.1: the pinned rook attacks f1 all the same.
    [
      '8/6k1/5r2/4B3/8/8/8/4K2R w K - 0 1',
      '0-0',
      'the king would pass over f1, which is attacked by the rook on f6',
    ],
    [
      '4k3/8/8/8/8/6r1/8/R3K2R w KQ - 0 1',
      'e1g1',
      'on g1 the king would be in check from the rook on g3',
    ],
    [rooks, 'Kg1', 'the king on e1 moves one square only, and castling is written O-O'],
    [rooks, 'Kc1', 'the king on e1 moves one square only, and castling is written O-O-O'],
  ])('%s: %s', (fen, written, reason) => {
    expect(fault(fen, written)).toBe(`illegal: ${reason}`);
  });
});

describe('pieces', () => {
  test.each([
    ['none can reach it', initial, 'Ne5', "no knight of White's can reach e5"],
    [
      'the only one cannot',
      '4k3/8/8/8/8/8/8/1N2K3 w - - 0 1',
      'Ne5',
      'the knight on b1 cannot reach e5 in one move',
    ],
    ['the one named cannot', initial, 'Nbf3', 'the knight on b1 cannot reach f3 in one move'],
    [
      'a bishop of the other colour',
      '4k3/8/8/8/8/8/8/2B1K3 w - - 0 1',
      'Bb3',
      'the bishop on c1 moves on dark squares, and b3 is light',
    ],
    [
      'the king is too far',
      '4k3/8/8/8/8/8/8/4K3 w - - 0 1',
      'Ke3',
      'the king on e1 moves one square only, and e3 is further away',
    ],
    ['it is there', '4k3/8/8/8/8/8/8/1N2K3 w - - 0 1', 'Nb1', "White's own knight stands on b1"],
    ['blocked', initial, 'Bc4', 'the way of the bishop on f1 to c4 is blocked by the pawn on e2'],
    [
      'blocked by the other side',
      '4k3/8/8/8/n7/8/8/R3K3 w - - 0 1',
      'Ra8',
      'the way of the rook on a1 to a8 is blocked by the knight on a4',
    ],
    ['the nearer of two is blocked', 'R3k3/8/8/8/8/p7/8/R3K3 w - - 0 1', 'Ra4', undefined],
    ['own piece', italian, 'Qxf7', "Black's own pawn stands on f7"],
    ['no such piece', '4k3/8/8/8/8/8/8/R3K3 w - - 0 1', 'Qd4', 'White has no queen'],
    ['no such piece on the file', initial, 'Ncd2', "White's own pawn stands on d2"],
    ['none on the file', initial, 'Ncd4', 'White has no knight on the c-file'],
    ['none on the rank', initial, 'N5f3', 'White has no knight on rank 5'],
    ['none on the square', initial, 'Nf1-e3', 'no white knight stands on f1'],
    ['another piece on the square', initial, 'Nf1e3', 'no white knight stands on f1'],
    ['nothing on the square', initial, 'e3e4', 'no piece stands on e3'],
    ['nothing to capture', initial, 'Nxf3', 'nothing stands on f3 to capture'],
    [
      'a capture without its x',
      '4k3/8/8/4p3/8/5N2/8/4K3 w - - 0 1',
      'Ne5',
      'a black pawn stands on e5, and taking it is written with an x',
    ],
    ['a promoted knight', initial, 'Nf3=Q', 'only a pawn promotes, and a knight stands on g1'],
  ])('%s', (_, fen, written, reason) => {
    if (reason === undefined) expect(() => fault(fen, written)).toThrow();
    else expect(fault(fen, written)).toBe(`illegal: ${reason}`);
  });
});

describe('the other side', () => {
  test.each([
    [initial, 'Nf6', "it is White's move here, and the knight on g8 is Black's"],
    [initial, 'e5', "it is White's move here, and the pawn on e7 is Black's"],
    [initial, 'e7e5', "it is White's move here, and the pawn on e7 is Black's"],
    [italian, 'Nxe5', "it is Black's move here, and the knight on f3 is White's"],
    [italian, 'Bxf7', "it is Black's move here, and the bishop on c4 is White's"],
    // Not even Black could play it, yet the piece named is Black's.
    [initial, 'Ra8-a5', "it is White's move here, and the rook on a8 is Black's"],
  ])('%s: %s', (fen, written, reason) => {
    expect(fault(fen, written)).toBe(`illegal: ${reason}`);
  });
});

describe('pawns (FIDE Laws, 3.7)', () => {
  const blocked = '4k3/8/8/8/8/4n3/4P3/4K3 w - - 0 1';
  const passed = '4k3/8/8/3pP3/8/8/8/4K3 w - - 0 1';
  const passing = '4k3/8/8/3pP3/8/8/8/4K3 w - d6 0 1';
  test.each([
    [blocked, 'e3', 'the pawn on e2 is blocked by the knight on e3'],
    [blocked, 'e4', 'the pawn on e2 is blocked by the knight on e3'],
    ['4k3/8/8/8/4n3/8/4P3/4K3 w - - 0 1', 'e4', 'the pawn on e2 is blocked by the knight on e4'],
    [blocked, 'exe3', 'a pawn captures diagonally, not along its file'],
    [blocked, 'e5', 'the pawn on e2 cannot go as far as e5 in one move'],
    [passed, 'e7', 'the pawn on e5 has left its first square and goes one step only'],
    [passed, 'e4', 'the pawn on e5 cannot go to e4: pawns only move forward'],
    [passed, 'e5e4', 'the pawn on e5 cannot go to e4: pawns only move forward'],
    [passed, 'c4', 'White has no pawn on the c-file'],
    ['7k/3P4/8/8/8/8/2P5/4K3 w - - 0 1', 'P7c7', 'White has no pawn on c7'],
    [passed, 'exd6', 'the pawn on d5 may be taken en passant only at once after its double step'],
    [passed, 'exf6', 'nothing stands on f6 to capture'],
    [passed, 'exd5', 'no white pawn stands on e4 to capture on d5'],
    [passed, 'exb6', 'a pawn captures on the next file, and the e-file is not next to b6'],
    [passed, 'xd4', 'no white pawn stands on c3 or e3 to capture on d4'],
    [passing, 'd6', 'taking en passant on d6 is written with an x'],
    [scandinavian, 'ed5', 'a black pawn stands on d5, and taking it is written with an x'],
    [scandinavian, 'e4=Q', "White's own pawn stands on e4"],
    [scandinavian, 'e5=Q', 'a pawn promotes on its last rank only, and e5 is not on it'],
    [
      '8/5P2/8/8/8/8/k7/4K3 w - - 0 1',
      'f8=K',
      'a pawn becomes a queen, rook, bishop or knight, never a king',
    ],
    [
      '8/5P2/8/8/8/8/k7/4K3 w - - 0 1',
      'f8=P',
      'a pawn becomes a queen, rook, bishop or knight, never a pawn',
    ],
  ])('%s: %s', (fen, written, reason) => {
    expect(fault(fen, written)).toBe(`illegal: ${reason}`);
  });
});

describe('more than one move', () => {
  test.each([
    [
      '4k3/8/8/8/8/2N5/8/4K1N1 w - - 0 1',
      'Ne2',
      'the knight on c3 and the knight on g1 can both go to e2',
    ],
    [
      '8/8/8/k7/4Q2Q/8/8/1K5Q w - - 0 1',
      'Qe1',
      'the queen on e4, the queen on h4 and the queen on h1 can all go to e1',
    ],
    [
      '8/8/8/k7/4Q2Q/8/8/1K5Q w - - 0 1',
      'Q4e1',
      'the queen on e4 and the queen on h4 can both go to e1',
    ],
    [
      '4k3/8/8/3p4/2P1P3/8/8/4K3 w - - 0 1',
      'xd5',
      'the pawn on c4 and the pawn on e4 can both go to d5',
    ],
    [
      '8/5P2/8/8/8/8/k7/4K3 w - - 0 1',
      'f8',
      'the pawn on f7 promotes on f8, and the move does not say to which piece',
    ],
    [
      '8/5P2/8/8/8/8/k7/4K3 w - - 0 1',
      'f7f8',
      'the pawn on f7 promotes on f8, and the move does not say to which piece',
    ],
  ])('%s: %s', (fen, written, reason) => {
    expect(fault(fen, written)).toBe(`ambiguous: ${reason}`);
  });
});

describe('what is not written as a move', () => {
  const general =
    'this is not written as a move: a piece letter (none for a pawn) and a square, such as Nf3 or e4';
  const foreign = (letter: string) =>
    `${letter} stands for no piece: the English letters are K, Q, R, B and N`;
  test.each([
    ['', 'no move is written'],
    ['!?', 'no move is written'],
    ['hello', general],
    ['N-f3', general],
    ['2e4', general],
    ['Sf3', foreign('S')],
    ['Зf3', foreign('З')],
    ['nf3', 'n is no file, and a piece is written with a capital'],
    ['NF3', 'the letters of the files are small, a to h'],
    ['E4', 'the letters of the files are small, a to h'],
    ['Exd5', 'E stands for no piece, and a file is written with a small letter'],
    ['Nf9', 'the board has no square f9'],
    ['Nj3', 'the board has no square j3'],
    ['e10', 'the board has no square e10'],
    ['P-K4', 'this is descriptive notation, and only algebraic notation is read'],
    ['N', 'the square that the piece goes to is not named in full'],
    ['exd', 'the square that the piece goes to is not named in full'],
  ])('%j', (written, reason) => {
    expect(fault(initial, written)).toBe(`unreadable: ${reason}`);
  });
});
