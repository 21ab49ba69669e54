import type { share as english } from '../en/share.ts';

export const share: typeof english = {
  open: 'Compartir la posición',
  title: 'Compartir esta posición',
  fen: 'Copiar la posición (FEN)',
  address: 'Copiar la dirección',
  moves: 'Copiar las jugadas hasta aquí (PGN)',
  share: 'Compartir…',
  copied: 'Copiado.',
  notCopied: 'El navegador no deja copiar a esta página: marque el texto de arriba y cópielo.',
  chapter: 'Las jugadas de este capítulo (PGN)',
  close: 'Cerrar',
};
