/** What a reader is told who plays moves of his own and writes notes; `free` travels as data, gaps in braces. */
export const free = {
  freePage: 'Your notes',

  free: {
    section: 'What is yours',
    line: 'Your line',
    leaves: 'It leaves the text {after}.',
    takeBack: 'Take back',
    toText: 'Back to the text',
    again: 'Your line again: {moves}',
    help: 'Play any move on the board, or write it here.',
    ready: 'Now every move can be played on the board.',
    backInText: 'Back in the text, {after}.',

    /** What the course says of a move. */
    advice: '{move} is what the course plays.',
    option: '{move} is possible too, says the course; it plays {advice}.',
    optionAlone: '{move} is possible, says the course.',
    bad: 'The course calls {move} a mistake.',
    badFor: 'The course calls {move} a mistake; it plays {advice}.',
    reply: 'The course knows {move}.',
    read: 'Read on in “{chapter}”',
    goesOn: 'It goes on: {moves}.',
    meets: 'The course knows this position by another way: {place}.',
    notMine: 'The course does not speak of {move}.',
    plays: 'Here it plays {moves}.',
    notTheirs: 'The course does not treat {move}.',
    related: 'Against {replies} it plays {answer}.',
    treats: 'It treats {replies} here.',
    beyond: 'The course does not reach this position.',

    /** What the board says of a move. */
    mate: 'That is mate.',
    stalemate: 'That is stalemate: a draw.',
    mates: 'Then {move} mates.',
    wins: {
      one: 'Then {move} wins material, worth one pawn by captures alone.',
      other: 'Then {move} wins material, worth {n} pawns by captures alone.',
    },

    /** Why a piece cannot go somewhere. */
    'not-its-way': 'The {piece} on {from} does not move to {to}.',
    'own-piece': 'Its own {blocker} stands on {square}.',
    blocked: 'The {blocker} on {square} is in the way.',
    pinned: 'The {piece} on {from} is pinned to its king by the {blocker} on {square}.',
    'stays-in-check': 'The king is in check from the {blocker} on {square}, and would stay so.',
    'into-check': 'On {to} the king would be in check from the {blocker} on {square}.',
    'opens-king': 'Taking like this would open the king to the {blocker} on {square}.',
    'pawn-takes-nothing': 'There is nothing on {to} for the pawn to take.',
    'pawn-takes-sideways':
      'A pawn does not take straight ahead: the {blocker} on {square} stops it.',
    'pawn-backwards': 'A pawn never goes backwards.',
    'pawn-has-moved': 'A pawn goes two squares only from where it began.',
    'castling-lost': 'Castling is not allowed any more: the king or the rook has moved.',
    'castling-out-of-check':
      'A king in check may not castle: the {blocker} on {square} gives check.',
    'castling-through-check':
      'In castling the king would pass over {over}, which the {blocker} on {square} attacks.',
    over: 'The game is over here.',

    /** Notes, bookmarks and drawings. */
    note: 'Note',
    noteLabel: 'Your note on the position {after}',
    noteHere: 'Your note',
    bookmark: 'Bookmark',
    bookmarked: 'Bookmarked.',
    unmarked: 'The bookmark is gone.',
    draw: 'Draw',
    drawHelp:
      'Choose two squares for an arrow, or one square twice for a mark; the same again rubs it out. With a mouse, the right button draws at any time.',
    drawFrom: 'From {square}: now choose where the arrow ends.',
    drawnArrow: 'Your arrow from {from} to {to}.',
    goneArrow: 'The arrow from {from} to {to} is gone.',
    drawnMark: 'Your mark on {square}.',
    goneMark: 'The mark on {square} is gone.',
    yours: 'Yours: {marks}.',
    arrowInWords: 'arrow {from} to {to}',
    markInWords: 'mark on {square}',
    rubOut: 'Rub out the drawing',
    rubbedOut: 'Your drawing is gone.',
    delete: 'Delete',
    deleted: 'Deleted.',
    undo: 'Undo',
    undone: 'Undone.',
    notKept:
      'This browser does not let the page keep anything: what you write is lost when you leave.',
    all: 'All your notes',
    signs: { note: 'you have a note here', bookmark: 'you have a bookmark here' },

    /** The page of everything that is the reader's. */
    none: 'You have no notes yet. Open a chapter and choose “{open}” at its board: a position can have a note, a bookmark and arrows of your own.',
    count: { one: 'One position.', other: '{n} positions.' },
    beside: 'In lines of your own',
    ownMoves: 'Your moves from there: {moves}',
    save: 'Save to a file',
    text: 'Save as text',
    load: 'Read from a file',
    taken: {
      one: 'Read: one position was taken from the file.',
      other: 'Read: {n} positions were taken from the file.',
    },
    nothingNew: 'Read: nothing in the file is later than what is kept here.',
    notNotes: 'This file holds no notes. Nothing was changed.',
    unreadable: 'This file cannot be read. Nothing was changed.',
  },
  freeLead:
    'What you have written and drawn at positions of this course. It is kept in this browser and sent nowhere; saving it to a file takes it to another.',
  freeNeedsScript: 'Notes need JavaScript, which is switched off in this browser.',
};
