/** The words of the boards; they travel to the browser as data. */
export const board = {
  board: {
    label: 'Board',
    start: 'at the start',
    after: 'after',
    or: 'or',
    next: 'next',
    /** Before the other places where the course reaches a position. */
    also: 'also reached:',
    /** Before the moves from here, the main one first. */
    plays: { white: 'White plays', black: 'Black plays' },
    back: 'Back',
    on: 'Forward',
    turn: 'Turn the board',
    fold: 'Fold the board away',
    unfold: 'Show the board',
    own: 'Play and note',
    ownFailed: 'Playing freely could not be loaded. Try again when you are connected.',
    to: 'to',
    takes: 'takes on',
    castlesShort: 'castles short',
    castlesLong: 'castles long',
    promotes: 'becomes a',
    check: 'check',
    mate: 'mate',
    squares: 'Board: choose a piece, then its square; the arrow keys walk over the squares',
    typed: 'Your move',
    play: 'Play',
    promote: 'The pawn becomes a',
    illegal: '{move} is not a legal move here.',
    cannotGo: 'The {piece} on {from} cannot go to {to}.',
    notYours: { white: 'White is to move.', black: 'Black is to move.' },
    unclear: '“{text}” could be {moves}.',
    unreadable: '“{text}” is not a move; write it as {example}.',
  },

  /** Where a position is set up by hand. */
  setUp: {
    squares:
      'Board: choose a piece below, then its squares; the arrow keys walk over the squares, Delete takes a piece off',
    tray: 'Pieces to set on the board',
    takeOff: 'Take a piece off',
    empty: 'empty',
  },
};
