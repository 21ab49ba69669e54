import { kindOfUciLetter } from '../../chess/uci.ts';
import { writePlacement } from '../../chess/write-placement.ts';
import { readPlacement } from '../../draw/placement.ts';

/**
 * The placement after a legal move in UCI notation, `e1g1` or `e7e8q`. Whether it is legal is not
 * asked: pages are made of moves that were proved when the course was built.
 * @returns `undefined` where nothing stands on the first square, or the text is no move.
 */
export function applyMove(placement: string, move: string): string | undefined {
  const [, from = '', to = '', promoted = ''] =
    /^([a-h][1-8])([a-h][1-8])([qrbn])?$/.exec(move) ?? [];
  const board = new Map(readPlacement(placement).map(({ square, piece }) => [square, piece]));
  const piece = board.get(from);
  if (piece === undefined || to === '') return undefined;
  const taken = board.get(to);
  board.delete(from);
  const kind = kindOfUciLetter[promoted] ?? piece.kind;
  board.set(to, { color: piece.color, kind });
  // A pawn that changes its file without a piece to take takes in passing.
  if (piece.kind === 'pawn' && from[0] !== to[0] && !taken) board.delete(`${to[0]}${from[1]}`);
  // Only a king that castles goes two files.
  const files = to.charCodeAt(0) - from.charCodeAt(0);
  if (piece.kind === 'king' && Math.abs(files) === 2) {
    const rank = to[1];
    const rook = `${files > 0 ? 'h' : 'a'}${rank}`;
    const castled = board.get(rook);
    board.delete(rook);
    if (castled) board.set(`${files > 0 ? 'f' : 'd'}${rank}`, castled);
  }
  return writePlacement(board);
}
