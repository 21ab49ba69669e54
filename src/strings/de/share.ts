import type { share as english } from '../en/share.ts';

export const share: typeof english = {
  open: 'Stellung teilen',
  title: 'Diese Stellung teilen',
  fen: 'Stellung kopieren (FEN)',
  address: 'Adresse kopieren',
  moves: 'Züge bis hierher kopieren (PGN)',
  share: 'Teilen …',
  copied: 'Kopiert.',
  notCopied:
    'Der Browser lässt diese Seite nicht kopieren: Markieren Sie den Text oben und kopieren Sie ihn.',
  chapter: 'Die Züge dieses Kapitels (PGN)',
  close: 'Schließen',
};
