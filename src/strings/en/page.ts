/** What the pages of chapters say, their boards, exercises and games. */
export const page = {
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
  draft: 'Draft',
  positionsLead: 'The positions to know, chapter by chapter.',
  noPositions: 'No position of this course has been given a name.',
  by: (author: string) => `by ${author}`,
  sideTaught: {
    white: 'A course for White',
    black: 'A course for Black',
    both: 'A course for both sides',
  },
  licence: (licence: string) => `Licence: ${licence}`,
  skipToText: 'Skip to the text',
  skipToSections: 'Skip to the sections',
  skipToExercises: 'Skip to the exercises',
  sections: 'Sections',
  sectionsOfChapter: 'Sections of this chapter',
  sectionsOfPage: 'Sections of this page',
  practiseChapter: 'Practise this chapter',
  nextChapter: 'Next chapter',
  previousChapter: 'Chapter before',
  pages: 'Pages of the course',
  allPages: 'All pages',
  /** Names the list of the author's own pages in the foot. */
  ownPages: 'About this course',
  languages: 'Languages',
  /** Above a chapter or a page that stands in the words of another language. */
  notTranslated: 'This page is not translated yet: it stands here in the words of the original.',
  cardAlt: (title: string) => `A board and the title: ${title}`,

  takeAlong: 'To take along',
  download: { book: 'The course as an e-book (EPUB)', moves: 'The moves for chess programs (PGN)' },

  notFound: 'There is no such page',
  notFoundLead: 'The address may be mistyped, or the chapter may have a new name.',
  toContents: 'To the contents',

  /** What a chapter says of an address whose place it has no more; gaps in braces. */
  gone: {
    position:
      'The position of this link is not in this chapter any more. The board shows the one that is most like it: {nearest}.',
    place: 'The place that this link leads to is not in this chapter any more.',
    elsewhere: 'It now stands in “{chapter}”.',
    close: 'Close',
  },

  startPosition: 'at the start',
  after: (move: string) => `after ${move}`,
  inChapter: (position: string, chapter: string) => `${position} in “${chapter}”`,
  /** A position by its title and in words: `“The knight goes to the rim”, after 8...Na5`. */
  titled: (title: string, words: string) => `“${title}”, ${words}`,
  /** Before a position, in a sentence; `word` is the author's word before it, in small letters, if any. */
  sameAs: (_word: string) => 'the same position as',
  /** Before a position, as a sentence and as a part of one. */
  comesLater: 'more on this later,',
  alternative: (reason: string) =>
    reason === '' ? '(an alternative)' : `(an alternative: ${reason})`,
  lineEnds: (reason: string) => `– ${reason}`,
  startsFrom: 'From the position',
  toMove: { white: 'White to move', black: 'Black to move' },
  picture: 'Picture',
  pictureTwice: 'Large picture',
  pictureOf: (caption: string) => `Picture of the diagram: ${caption}`,
  and: 'and',

  someone: 'N.N.',
  round: (round: string) => `round ${round}`,
  gameGoesOn: (move: number) => `The moves up to ${move} are left out.`,
  /** Where a game leaves the course; gaps in braces. */
  gameLeaves: {
    sides: { white: 'White', black: 'Black' },
    advised:
      '{side} leaves the course {after}: the course advises {advice}; here {played} was played.',
    covered:
      '{side} leaves the course {after}: the course answers {moves}; here {played} was played.',
    known: '{side} leaves the course {after}: the course has {moves}; here {played} was played.',
    ended: 'The course ends {after}; the game went on with {played}.',
    within: 'This game never leaves the course: it ends {after}.',
    never: 'This game never enters the course.',
  },

  exerciseNumber: (number: number) => `Exercise ${number}`,
  answers: 'Answers',
  /** The move of the other side before the question. */
  justPlayed: {
    white: (move: string) => `White has just played ${move}.`,
    black: (move: string) => `Black has just played ${move}.`,
  },
  hint: (number: number, of: number) => (of === 1 ? 'Hint' : `Hint ${number} of ${of}`),
  answer: 'Answer',
  alsoGood: 'Good too, but not the answer:',
  notTheAnswer: 'Not the answer:',

  /** What an exercise says while it is answered; gaps in braces. It travels to the browser as data. */
  exercise: {
    giveUp: 'Show the answer',
    again: 'Start again',
    look: 'Look for the answer',
    right: 'Right.',
    reply: 'Right. {move} follows. Find the next move ({n} of {count}).',
    whole: 'Right. That is the whole answer.',
    also: 'Good too, but not the answer.',
    alsoReply: 'Good too, but not the answer. {move} follows. Go on.',
    wrong: 'Not the answer.',
    legal: '{move} can be played, but it is not the answer.',
    given: 'The answer:',
    back: 'Previous move',
    on: 'Next move',
    next: 'Next exercise',
    all: 'All exercises',
  },

  patternEmpty: (squares: string) => `Empty: ${squares}.`,
  patternLegend: 'Bracketed squares are empty; other pieces may stand anywhere.',
  patternCount: { one: 'In one position of the course', other: 'In {n} positions of the course' },
  patternHere: 'In this chapter:',
  patternThere: (chapter: string) => `In “${chapter}”:`,
  /** Positions that follow one another in a line. */
  patternRun: (first: string, last: string) => `from ${first} to ${last}`,
  patternMore: (count: number) => `${count} more`,
  patternAdvice: 'Advised:',
  patternOr: 'or',
  patternClaims: 'True in each of these positions:',
  patternExcept: 'Except',
  patternReversed: 'With colours reversed',

  footnotes: 'Notes',
  footnoteBack: 'Back to the text',
  showOnBoard: 'Show on the board',
};
