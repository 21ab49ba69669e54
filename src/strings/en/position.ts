/** A position in words, for those who do not see its board. */
export const position = {
  sides: { white: 'White', black: 'Black' },
  piece: {
    king: 'king',
    queen: 'queen',
    rook: 'rook',
    bishop: 'bishop',
    knight: 'knight',
    pawn: 'pawn',
  },
  pieces: {
    king: 'kings',
    queen: 'queens',
    rook: 'rooks',
    bishop: 'bishops',
    knight: 'knights',
    pawn: 'pawns',
  },
  toMove: { white: 'White to move.', black: 'Black to move.' },
  inCheck: { white: 'White to move, in check.', black: 'Black to move, in check.' },
  mated: { white: 'White is mated.', black: 'Black is mated.' },
  stalemated: { white: 'White is stalemated.', black: 'Black is stalemated.' },
};
