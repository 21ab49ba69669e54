/** A position as other programs and people get it. */
export const share = {
  open: 'Share this position',
  title: 'Share this position',
  fen: 'Copy the position (FEN)',
  address: 'Copy its address',
  moves: 'Copy the moves up to here (PGN)',
  share: 'Share…',
  copied: 'Copied.',
  notCopied: 'The browser does not let this page copy: mark the text above and copy it.',
  chapter: 'The moves of this chapter (PGN)',
  close: 'Close',
};
