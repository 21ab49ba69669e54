import type { PieceKind } from '../../chess/types.ts';

/** Every word the site itself says, in English. Another language is another file of this shape. */
export const en = {
  pieceLetters: { king: 'K', queen: 'Q', rook: 'R', bishop: 'B', knight: 'N', pawn: '' },
  pieceNames: {
    king: 'king',
    queen: 'queen',
    rook: 'rook',
    bishop: 'bishop',
    knight: 'knight',
    pawn: 'pawn',
  },
  white: 'White',
  black: 'Black',

  contents: 'Contents',
  chapterNumber: (n: number) => `Chapter ${n}`,
  positions: 'Named positions',
  positionsLead: 'Every position of the course that has a name, in the order of the text.',
  noPositions: 'No position of this course has been given a name.',
  previous: 'Previous',
  next: 'Next',
  by: (author: string) => `by ${author}`,
  sideTaught: {
    white: 'A course for White',
    black: 'A course for Black',
    both: 'A course for both sides',
  },
  licence: (licence: string) => `Licence: ${licence}`,
  skipToText: 'Skip to the text',
  pages: 'Pages of the course',
  cardAlt: (title: string) => `A board and the title: ${title}`,

  notFound: 'There is no such page',
  notFoundLead: 'The address may be mistyped, or the chapter may have a new name.',
  toContents: 'To the contents',

  startPosition: 'the position at the start',
  after: (move: string) => `after ${move}`,
  inChapter: (position: string, chapter: string) => `${position} in “${chapter}”`,
  sameAs: 'the same position as',
  comesLater: 'we come to this later:',
  alternative: (reason: string) =>
    reason === '' ? '(an alternative)' : `(an alternative: ${reason})`,
  lineEnds: (reason: string) => `– ${reason}`,
  startsFrom: 'From',
  toMove: { white: 'White to move', black: 'Black to move' },
  picture: 'Picture',
  pictureTwice: 'double size',
  pictureOf: (caption: string) => `Picture of the diagram: ${caption}`,
  footnotes: 'Notes',
  footnoteBack: 'Back to the text',
  showOnBoard: 'Show on the board',

  /** The words of the reading board; they travel to the browser as data. */
  board: {
    label: 'Board',
    start: 'at the start',
    after: 'after',
    or: 'or',
    next: 'next',
    back: 'Back',
    on: 'On',
    turn: 'Turn the board',
    fold: 'Fold the board away',
    unfold: 'Show the board',
    to: 'to',
    takes: 'takes on',
    castlesShort: 'castles short',
    castlesLong: 'castles long',
    promotes: 'becomes a',
    check: 'check',
    mate: 'mate',
  },
} satisfies Catalogue;

interface Catalogue {
  readonly pieceLetters: Readonly<Record<PieceKind, string>>;
  readonly pieceNames: Readonly<Record<PieceKind, string>>;
  readonly [id: string]: unknown;
}
