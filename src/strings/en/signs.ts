/** The page that explains signs, keys, settings and reading offline. */
export const signs = {
  page: 'Signs and keys',
  lead: 'What the signs on the boards and behind the moves mean, which keys there are, and how to read without a network.',

  boards: 'On a board',
  board: {
    turn: 'The triangle at the edge shows whose move it is: it stands on the side to move, black or white as that side is.',
    lastMove: 'The last move: where the piece came from, and where it stands now.',
    mark: 'Brackets around a square: the text speaks of it.',
    empty:
      'In a pattern, brackets stand around squares that are empty; other pieces may stand anywhere.',
    plan: 'A plan: where a piece wants to go.',
    threat: 'A threat: what a piece attacks.',
    guard: 'A guard: what a piece protects.',
  },

  moves: 'In the moves',
  letters:
    'Pieces are named by their letter; a pawn has none. In the settings you can choose figurines or the English letters.',
  piece: 'Piece',
  letter: 'Letter',
  english: 'English',
  figurine: 'Figurine',
  castles:
    '{short} is castling on the king’s side, {long} on the queen’s side; x takes, + is check, # is mate, = is what a pawn becomes.',
  glyphs: 'Behind a move',
  sign: 'Sign',
  meaning: 'Meaning',

  states: 'How you stand',
  state: {
    here: 'you are here',
    right: 'known, or answered right',
    wrong: 'missed',
    due: 'time to practise it again',
    rest: 'still to come',
  },

  keys: 'Keys',
  key: {
    Arrows: 'the arrows',
    ArrowLeft: '←',
    ArrowRight: '→',
    ArrowUp: '↑',
    ArrowDown: '↓',
    Home: 'Home',
    End: 'End',
    Enter: 'Enter',
    Escape: 'Esc',
    Delete: 'Delete',
  },
  places: {
    reading: 'In a chapter',
    squares: 'On a board with squares to choose',
    exercise: 'In the lines of an answer',
    tree: 'In the tree',
    search: 'In the field for moves',
  },
  does: {
    reading: {
      ArrowRight: 'the next move',
      ArrowLeft: 'the move before',
      ArrowDown: 'the next variation, when a move or the board has the focus',
      ArrowUp: 'the variation before',
      Home: 'the start of the moves',
      End: 'the end of the line',
    },
    squares: {
      Arrows: 'walk over the squares',
      Enter: 'chooses a piece, then its square; the space bar does too',
      Escape: 'lets the piece go',
      Delete: 'takes a piece off, where a position is set up',
    },
    exercise: { ArrowRight: 'the next move', ArrowLeft: 'the move before' },
    tree: {
      ArrowRight: 'unfolds a line, or goes to the next',
      ArrowLeft: 'folds a line, or goes to the one it branches from',
      ArrowDown: 'the next line',
      ArrowUp: 'the line before',
    },
    search: { Enter: 'finds the position' },
  },
  typed: 'Moves can also be typed, as they are printed here or with the English letters: {move}.',

  settingsLead:
    'Light or dark, letters or figurines, the size of the boards, how a piece moves and whether you hear it: you choose, and this browser keeps it.',
  settingsOpen: 'Open the settings',

  offline: 'Reading without a network',
  offlineHow: [
    'You need do nothing: a few seconds after you open any page, your browser keeps the whole course. Then open the same address without a network and read, search and practise as ever. When there is a newer edition, a line at the foot of the page says so.',
    'You can also install the course as an app with its own icon. On a computer, look for “Install” in the browser’s address bar or menu; on an Android phone choose “Add to home screen” in the browser’s menu; on an iPhone or iPad tap “Share”, then “Add to Home Screen”.',
    'If the whole course came to you as a folder, open index.html in it: everything works from there too.',
  ],
  chapterMoves: 'The moves of one chapter (PGN)',
  notOffline:
    'This course is not kept by the browser. Take along one of its files below, or print it.',
};
