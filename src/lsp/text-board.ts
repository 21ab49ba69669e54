import { type Color, englishLetters, type Position, readBoard, squareAt } from '../chess/index.ts';

/** A board in letters, as FEN has them: capitals for White, small letters for Black. */
export function textBoard(position: Position, view: Color): string {
  const board = readBoard(position);
  const ranks = view === 'white' ? [8, 7, 6, 5, 4, 3, 2, 1] : [1, 2, 3, 4, 5, 6, 7, 8];
  const files = view === 'white' ? [1, 2, 3, 4, 5, 6, 7, 8] : [8, 7, 6, 5, 4, 3, 2, 1];
  const rows = ranks.map((rank) => {
    const signs = files.map((file) => {
      const piece = board.get(squareAt(file, rank) ?? '');
      if (!piece) return '·';
      const letter = englishLetters[piece.kind] || 'P';
      return piece.color === 'white' ? letter : letter.toLowerCase();
    });
    return `${rank}  ${signs.join(' ')}`;
  });
  return [...rows, '', `   ${files.map((file) => ' abcdefgh'.charAt(file)).join(' ')}`].join('\n');
}
