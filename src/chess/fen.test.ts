import { describe, expect, test } from 'vitest';
import { isFenFault, parseFen } from './fen.ts';
import { initialPosition } from './initial.ts';
import { isMoveFault, playMove } from './play.ts';

function read(text: string) {
  const position = parseFen(text);
  if (isFenFault(position)) throw new Error(position.reason);
  return position;
}

/** A fault, with the text from its offset on. */
function refuse(text: string) {
  const fault = parseFen(text);
  if (!isFenFault(fault)) throw new Error(`read ${fault.fen}`);
  return [fault.reason, text.slice(fault.offset)];
}

describe('a FEN that is read', () => {
  test('the initial position, PGN standard 16.1.4', () => {
    const fen = 'rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR w KQkq - 0 1';
    expect(read(fen)).toEqual(initialPosition);
    expect(initialPosition.fen).toBe(fen);
  });

  test('counters are 0 and 1 where they are not given', () => {
    expect(read('4k3/8/8/8/8/8/8/4K3 w - -').fen).toBe('4k3/8/8/8/8/8/8/4K3 w - - 0 1');
    expect(read('4k3/8/8/8/8/8/8/4K3 w - - 7').fen).toBe('4k3/8/8/8/8/8/8/4K3 w - - 7 1');
  });

  test('spaces, the order of castling rights and zeros do not matter', () => {
    expect(read('  r3k2r/8/8/8/8/8/8/R3K2R   b qkQK -  03 012 ').fen).toBe(
      'r3k2r/8/8/8/8/8/8/R3K2R b KQkq - 3 12',
    );
  });

  // FIDE Laws, 9.2: positions are the same only if the possible moves are the same.
  test.each([
    ['no pawn can capture', 'rnbqkbnr/pppppppp/8/8/4P3/8/PPPP1PPP/RNBQKBNR b KQkq e3 0 1', '-'],
    ['a pawn can', 'rnbqkbnr/ppp1pppp/8/8/3pP3/8/PPPP1PPP/RNBQKBNR b KQkq e3 0 1', 'e3'],
    ['it would open the rank', '8/8/8/8/k2Pp2Q/8/8/3K4 b - d3 0 1', '-'],
    ['it goes along the pin', '8/8/8/1k6/2pP4/8/4B3/4K3 b - d3 0 1', 'd3'],
    ['it evades check', '8/8/8/2k5/2pP4/8/8/4K3 b - d3 0 1', 'd3'],
  ])('the en-passant square where %s', (_, fen, square) => {
    expect(read(fen).key.split(' ')[3]).toBe(square);
  });

  test('the key is the FEN without the counters', () => {
    expect(read('4k3/8/8/8/8/8/8/4K3 w - - 12 40').key).toBe('4k3/8/8/8/8/8/8/4K3 w - -');
  });

  test('a position that moves have led to', () => {
    let position = initialPosition;
    for (const san of ['e4', 'Nf6', 'e5', 'd5']) {
      const played = playMove(position, san);
      if (isMoveFault(played)) throw new Error(played.reason);
      position = played.after;
    }
    expect(position.key).toBe('rnbqkb1r/ppp1pppp/5n2/3pP3/8/8/PPPP1PPP/RNBQKBNR w KQkq d6');
    expect(read(position.fen)).toEqual(position);
  });
});

describe('a FEN that is refused', () => {
  const ranks = '4k3/8/8/8/8/8/8/4K3';

  test.each([
    ['', 'the pieces are missing: a FEN has six fields, and at least the first four must be given'],
    [
      ranks,
      'the side to move is missing: a FEN has six fields, and at least the first four must be given',
    ],
    [
      `${ranks} w`,
      'the castling rights are missing: a FEN has six fields, and at least the first four must be given',
    ],
    [
      `${ranks} w -`,
      'the en-passant square is missing: a FEN has six fields, and at least the first four must be given',
    ],
  ])('too few fields: %j', (text, reason) => {
    expect(refuse(text)).toEqual([reason, '']);
  });

  test.each([
    ['a seventh field', `${ranks} w - - 0 1 x`, 'a FEN has six fields, and this is a seventh', 'x'],
    [
      'seven ranks',
      '4k3/8/8/8/8/8/4K3 w - -',
      'the pieces fill 7 ranks instead of eight',
      ' w - -',
    ],
    ['one rank', 'k6K w - -', 'the pieces fill 1 rank instead of eight', ' w - -'],
    ['nine ranks', `${ranks}/8 w - -`, 'the pieces fill more than eight ranks', '/8 w - -'],
    [
      'a short rank',
      '4k3/8/8/7/8/8/8/4K3 w - -',
      'rank 5 has 7 squares instead of eight',
      '7/8/8/8/4K3 w - -',
    ],
    [
      'an empty rank',
      '4k3//8/8/8/8/8/4K3 w - -',
      'rank 7 has 0 squares instead of eight',
      '/8/8/8/8/8/4K3 w - -',
    ],
    [
      'a long rank',
      '4k3/8/8/p8/8/8/8/4K3 w - -',
      'rank 5 has more than eight squares',
      '8/8/8/8/4K3 w - -',
    ],
    [
      'a digit too high',
      '4k3/9/8/8/8/8/8/4K3 w - -',
      '9 stands for no piece: a FEN knows KQRBNP, kqrbnp and the digits 1 to 8',
      '9/8/8/8/8/8/4K3 w - -',
    ],
    [
      'an unknown letter',
      '4k3/3s4/8/8/8/8/8/4K3 w - -',
      's stands for no piece: a FEN knows KQRBNP, kqrbnp and the digits 1 to 8',
      's4/8/8/8/8/8/4K3 w - -',
    ],
    [
      'a pawn on the last rank',
      '4k2P/8/8/8/8/8/8/4K3 w - -',
      'a pawn cannot stand on rank 8',
      'P/8/8/8/8/8/8/4K3 w - -',
    ],
    [
      'a pawn on the first rank',
      '4k3/8/8/8/8/8/8/p3K3 w - -',
      'a pawn cannot stand on rank 1',
      'p3K3 w - -',
    ],
    ['no king', '8/8/8/8/8/8/8/4K3 w - -', 'Black has no king', '8/8/8/8/8/8/8/4K3 w - -'],
    ['two kings', '4k3/8/8/8/8/K7/8/4K3 w - -', 'White has 2 kings', 'K3 w - -'],
    [
      'nine pawns',
      '4k3/pppppppp/p7/8/8/8/8/4K3 w - -',
      'Black has 9 pawns, and a side has at most eight',
      'p7/8/8/8/8/4K3 w - -',
    ],
    [
      'seventeen pieces',
      '4k3/8/8/8/8/N7/PPPPPPPP/RNBQKBNR w - -',
      'White has 17 pieces and pawns, and a side has at most sixteen',
      'R w - -',
    ],
    ['another side', `${ranks} W - -`, 'the side to move is w or b, not W', 'W - -'],
    [
      'a castling letter',
      `${ranks} w KX -`,
      'White cannot have the right to castle kingside, since no white rook stands on h1',
      'KX -',
    ],
    [
      'another castling letter',
      '4k3/8/8/8/8/8/8/4K2R w KH -',
      'the castling rights are - or some of KQkq, not H',
      'H -',
    ],
    [
      'a castling letter twice',
      '4k3/8/8/8/8/8/8/4K2R w KK -',
      'the castling right K is given twice',
      'K -',
    ],
    [
      'castling without the king',
      '3k3r/8/8/8/8/8/8/4K3 w k -',
      'Black cannot have the right to castle kingside, since no black king stands on e8',
      'k -',
    ],
    [
      'castling without the rook',
      '4k2R/4p3/8/8/8/8/8/4K3 b k -',
      'Black cannot have the right to castle kingside, since no black rook stands on h8',
      'k -',
    ],
    [
      'queenside castling without the rook',
      '4k3/8/8/8/8/8/8/4K2R w KQ -',
      'White cannot have the right to castle queenside, since no white rook stands on a1',
      'Q -',
    ],
    ['no square', `${ranks} w - e9`, 'the en-passant square is - or a square, not e9', 'e9'],
    [
      'the wrong rank',
      '4k3/8/8/8/4P3/8/8/4K3 w - e3',
      'e3 cannot be the en-passant square: Black moved last, so it lies on rank 6, not 3',
      'e3',
    ],
    [
      'no pawn there',
      `${ranks} w - e6 0 1`,
      'e6 cannot be the en-passant square, since no black pawn stands on e5',
      'e6 0 1',
    ],
    [
      'a square that is taken',
      '4k3/8/8/8/4P3/4N3/8/4K3 b - e3',
      'e3 cannot be the en-passant square, since a pawn that has just come from e2 to e4 leaves e3 empty',
      'e3',
    ],
    [
      'a pawn that has not left',
      '4k3/8/8/8/4P3/8/4P3/4K3 b - e3',
      'e3 cannot be the en-passant square, since a pawn that has just come from e2 to e4 leaves e2 empty',
      'e3',
    ],
    [
      'a bad clock',
      `${ranks} w - - -1 1`,
      'the half-move clock is a whole number from 0, not -1',
      '-1 1',
    ],
    [
      'a bad move number',
      `${ranks} w - - 0 0`,
      'the move number is a whole number from 1, not 0',
      '0',
    ],
    [
      'a word for a number',
      `${ranks} w - - 0 one`,
      'the move number is a whole number from 1, not one',
      'one',
    ],
  ])('%s', (_, text, reason, rest) => {
    expect(refuse(text)).toEqual([reason, rest]);
  });

  // chess.js 1.4.0 reads this position; FIDE Laws, 3.9, do not allow it.
  test('a side in check that is not to move', () => {
    expect(refuse('k7/8/8/8/Q6Q/8/8/1K5Q w - - 0 1')).toEqual([
      "it is White's move, yet Black's king on a8 is in check from the queen on a4 and the queen on h1",
      'w - - 0 1',
    ]);
  });

  test('kings that touch', () => {
    expect(refuse('8/8/8/8/8/4k3/4K3/8 w - -')[0]).toBe(
      "it is White's move, yet Black's king on e3 is in check from the king on e2",
    );
  });
});
