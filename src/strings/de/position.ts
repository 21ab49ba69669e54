import type { position as english } from '../en/position.ts';

export const position: typeof english = {
  sides: { white: 'Weiß', black: 'Schwarz' },
  piece: {
    king: 'König',
    queen: 'Dame',
    rook: 'Turm',
    bishop: 'Läufer',
    knight: 'Springer',
    pawn: 'Bauer',
  },
  pieces: {
    king: 'Könige',
    queen: 'Damen',
    rook: 'Türme',
    bishop: 'Läufer',
    knight: 'Springer',
    pawn: 'Bauern',
  },
  toMove: { white: 'Weiß am Zug.', black: 'Schwarz am Zug.' },
  inCheck: { white: 'Weiß am Zug, im Schach.', black: 'Schwarz am Zug, im Schach.' },
  mated: { white: 'Weiß ist matt.', black: 'Schwarz ist matt.' },
  stalemated: { white: 'Weiß ist patt.', black: 'Schwarz ist patt.' },
};
