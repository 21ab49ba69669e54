import { type PlacedPiece, readPlacement } from '../../draw/placement.ts';

const letters = { king: 'k', queen: 'q', rook: 'r', bishop: 'b', knight: 'n', pawn: 'p' } as const;

/**
 * The placement after a legal move in UCI notation, `e1g1` or `e7e8q`. Whether it is legal is not
 * asked: pages are made of moves that were proved when the course was built.
 * @returns `undefined` where nothing stands on the first square, or the text is no move.
 */
export function applyMove(placement: string, move: string): string | undefined {
  const [, from = '', to = '', promoted] = /^([a-h][1-8])([a-h][1-8])([qrbn])?$/.exec(move) ?? [];
  const board = new Map(readPlacement(placement).map(({ square, piece }) => [square, piece]));
  const piece = board.get(from);
  if (piece === undefined || to === '') return undefined;
  const taken = board.get(to);
  board.delete(from);
  const kind = kinds.find((name) => letters[name] === promoted) ?? piece.kind;
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
  return write(board);
}

const kinds = ['king', 'queen', 'rook', 'bishop', 'knight', 'pawn'] as const;

function write(board: ReadonlyMap<string, PlacedPiece['piece']>): string {
  const ranks = [...'87654321'].map((rank) =>
    [...'abcdefgh']
      .map((file) => {
        const piece = board.get(file + rank);
        if (piece === undefined) return '1';
        const letter = letters[piece.kind];
        return piece.color === 'white' ? letter.toUpperCase() : letter;
      })
      .join('')
      .replace(/1+/g, (empty) => String(empty.length)),
  );
  return ranks.join('/');
}
