import type { position as english } from '../en/position.ts';

export const position: typeof english = {
  sides: { white: 'Blancas', black: 'Negras' },
  piece: {
    king: 'rey',
    queen: 'dama',
    rook: 'torre',
    bishop: 'alfil',
    knight: 'caballo',
    pawn: 'peón',
  },
  pieces: {
    king: 'reyes',
    queen: 'damas',
    rook: 'torres',
    bishop: 'alfiles',
    knight: 'caballos',
    pawn: 'peones',
  },
  toMove: { white: 'Juegan las blancas.', black: 'Juegan las negras.' },
  inCheck: {
    white: 'Juegan las blancas, que están en jaque.',
    black: 'Juegan las negras, que están en jaque.',
  },
  mated: { white: 'Las blancas están en jaque mate.', black: 'Las negras están en jaque mate.' },
  stalemated: { white: 'Las blancas están ahogadas.', black: 'Las negras están ahogadas.' },
};
