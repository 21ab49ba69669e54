/** What is proposed for the mistakes that authors make. Common practice, no source. */
import { expect, test } from 'vitest';
import { isFenFault, parseFen } from '../fen.ts';
import { initialPosition } from '../initial.ts';
import { isMoveFault, playMove } from '../play.ts';

const initial = initialPosition.fen;
const scandinavian = 'rnbqkbnr/ppp1pppp/8/3p4/4P3/8/PPPP1PPP/RNBQKBNR w KQkq - 0 2';
const pinned = '4k3/8/8/8/1b6/2N5/8/4K1N1 w - - 0 1';
const castling = 'r3k2r/8/8/8/8/8/8/R3K2R w KQkq - 0 1';
const promotion = '8/5P2/8/8/8/8/k7/4K3 w - - 0 1';
const bishopOrPawn = '4k3/8/8/8/2p5/1P6/8/4KB2 w - - 0 1';

test.each([
  ['letters of other languages: German', initial, 'Sf3', ['Nf3']],
  ['Spanish', initial, 'Cf3', ['Nf3', 'f3']],
  ['Russian', initial, 'Кf3', ['Nf3']],
  ['German bishop', bishopOrPawn, 'Lxc4', ['Bxc4']],
  ['French bishop', bishopOrPawn, 'Fxc4', ['Bxc4', 'bxc4']],
  ['Spanish rook', castling, 'Txa8', ['Rxa8+']],
  ['small letter', initial, 'nf3', ['Nf3']],
  ['capitals throughout', initial, 'NF3', ['Nf3']],
  ['capital file', initial, 'E4', ['e4']],
  ['swapped letters', initial, 'N3f', ['Nf3']],
  ['a letter for the digit 1', '7k/8/8/8/8/4R3/8/K7 w - - 0 1', 'Rel', ['Re1']],
  ['a rank off the board', initial, 'Nf9', ['Nf3']],
  ['the other knight', initial, 'Nbf3', ['Nf3']],
  ['the pinned piece', pinned, 'Nce2', ['Ne2']],
  ['another square of the same piece', pinned, 'Ne4', ['Ne2', 'Nf3']],
  ['another piece to the same square', scandinavian, 'Nd5', ['exd5']],
  ['missing x', scandinavian, 'ed5', ['exd5']],
  ['missing x and file', scandinavian, 'd5', ['exd5']],
  ['files only', scandinavian, 'ed', ['exd5']],
  ['files only, with x', scandinavian, 'exd', ['exd5']],
  ['false x', initial, 'Nxf3', ['Nf3']],
  ['a bishop for a pawn', '4k3/8/8/8/2p5/1P6/8/4K3 w - - 0 1', 'Bxc4', ['bxc4']],
  ['a pawn for a bishop', '4k3/8/8/8/2p5/8/8/4KB2 w - - 0 1', 'bxc4', ['Bxc4']],
  ['missing promotion', promotion, 'f8', ['f8=Q', 'f8=N', 'f8=R', 'f8=B']],
  ['false promotion', initial, 'e4=Q', ['e4']],
  ['ambiguous', '4k3/8/8/8/8/2N5/8/4K1N1 w - - 0 1', 'Ne2', ['Nce2', 'Nge2']],
  ["castling as the king's move", castling, 'Kg1', ['O-O']],
  ['castling to the other side', '4k3/8/8/8/8/8/5r2/R3K2R w KQ - 0 1', 'O-O', ['O-O-O']],
  ['the wrong first square', initial, 'e3e4', ['e4']],
  ['the move of the other side', initial, 'Nf6', []],
  ['nothing like it', initial, 'hello', []],
])('%s', (_, fen, written, meant) => {
  const position = parseFen(fen);
  if (isFenFault(position)) throw new Error(position.reason);
  const played = playMove(position, written);
  if (!isMoveFault(played)) throw new Error(`${written} is ${played.san}`);
  expect(played.meant).toEqual(meant);
});
