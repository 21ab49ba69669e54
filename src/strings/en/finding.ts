/** The pages that find things: search, tree, named positions, patterns. */
export const finding = {
  /** Short names of the pages, as every head lists them. */
  pageNames: {
    compare: 'Your games',
    search: 'Search',
    tree: 'Tree',
    positions: 'Positions',
    patterns: 'Patterns',
  },
  chaptersInstead: 'Without scripts you can read all chapters:',

  searchTitle: 'Search',
  searchNoScript: 'Searching needs JavaScript, which is switched off.',
  searchWords: 'Words',
  searchWordsLabel: 'Words of the text, or the title of a position',
  searchPosition: 'A position',
  searchPositionLabel: 'A FEN, or moves from the start',
  searchPositionHint: 'Such as',
  searchGo: 'Search',
  searchBoard: 'Set up a board',
  searchBoardLead:
    'Put pieces on the board. A few are enough: what is found has them on these squares, and may have others beside.',
  searchBoardEmpty: 'Empty the board',
  searchBoardFull: 'Set up all pieces',

  /** What the search says; gaps in braces. It travels to the browser as data. */
  search: {
    searching: 'Searching …',
    after: 'after {move}',
    start: 'at the start',
    inChapter: 'in “{chapter}”',
    againIn: 'in “{chapter}”, place {number}',
    board: 'The position {where}',
    places: 'Stands',
    goesOn: 'Goes on with',
    ends: 'The line ends here.',
    inTree: 'Show in the tree',
    kinds: { advice: 'advice', option: 'option', bad: 'bad', reply: '' },
    and: 'and',
    more: 'Show {count} more',

    namesFound: 'Named positions',
    phraseFirst: 'Those with all of it in one phrase come first.',
    chaptersFound: { one: 'Found on one page.', other: 'Found on {n} pages.' },
    noWords: 'No page has “{words}”.',
    moreInChapter: { one: 'and in one more place', other: 'and in {n} more places' },
    fromFolder:
      'The search by words needs the published site: a browser does not let a page that was opened from a folder read its index. Positions, and their names, can be searched for here.',
    noWasm:
      "The search by words needs WebAssembly, which is not allowed here. The host of this site can allow it: in its header Content-Security-Policy, script-src needs 'wasm-unsafe-eval'. Positions, and their names, can be searched for.",
    noIndex:
      'The search by words could not be loaded. Positions, and their names, can be searched for.',

    has: 'The course has this position: {where}.',
    hasNot: 'The course does not have this position.',
    alike: 'It has the same pieces in another position:',
    alikeToo: 'The same pieces stand in another position too:',
    differs: {
      turn: 'the other side is to move',
      castling: 'the castling rights differ',
      'en-passant': 'the en-passant capture differs',
    },
    but: '{where}, but {differs}',
    knowsUpTo: 'The course knows this up to {move}; it does not have {next}.',
    knowsNot: 'The course does not have {next}, and none of the positions that follow.',
    cannotPlay: '{move} cannot be played.',
    cannotPlayAfter: '{move} cannot be played after {last}.',
    meant: 'Did you mean {moves}?',
    or: 'or',
    reason: 'The reason: {reason}.',
    /** Where the reason comes in English within another language. */
    reasonLanguage: 'en',
    noFen: 'This is no FEN.',
    fenHere: 'It goes wrong here:',
    fenHelp:
      'A FEN has the pieces rank by rank from the eighth, the side to move, the castling rights and the en-passant square, such as {example}',
    unreadable:
      '“{words}” is neither a FEN nor moves. Paste a FEN, or moves from the start of the game, such as {example}.',
    emptyField: 'Type or paste a FEN or moves.',
    emptyWords: 'Type a word.',
    emptyBoard: 'Put a piece on the board.',
    exactly: {
      one: 'One position has just these pieces:',
      other: '{n} positions have just these pieces:',
    },
    holding: {
      one: 'One position has them among others:',
      other: '{n} positions have them among others:',
    },
    nowhere: 'No position of the course has these pieces on these squares.',
  },

  treeTitle: 'The tree of the course',
  treeLead:
    'Every line of the course from its first move. A line runs on to where the course knows more than one move; unfold it to see them. Where two orders of moves meet, the line is told once.',
  treeNoScript: 'The tree unfolds by JavaScript, which is switched off.',
  treeKeys:
    'Keys: Tab or ↑ ↓ from line to line, ← → from move to move; on + and –, → unfolds and ← folds.',
  tree: {
    label: 'The lines of the course',
    unfoldAll: 'Unfold everything',
    foldAll: 'Fold everything',
    start: 'From the start',
    elsewhere: 'From a position in “{chapter}”',
    ways: '{count} ways on',
    unfold: '{move}, {count} ways on',
    after: 'after {move}:',
    read: 'Read it in “{chapter}”',
    see: 'goes on as after {move}',
    same: 'the same position as after {move}',
    sample: { advice: 'Bold', reply: 'Plain', option: 'Italic' },
    legend: {
      advice: 'the course’s advice',
      reply: 'a reply of the other side',
      option: 'another move of the course’s side: an option, or bad',
    },
    kinds: { advice: 'advice', option: 'option', bad: 'bad', reply: '' },
  },

  positionsTitle: 'Positions',
  transpositions: 'Transpositions',
  transpositionsLead:
    'Positions that the course reaches by different orders of moves, told from where the orders part.',
  /** Before a list of the ways to a position; `after` is the last move that they share. */
  waysHere: (count: number, after?: string) => {
    const ways = `${['No', 'One', 'Two', 'Three', 'Four', 'Five', 'Six'][count] ?? count} ways lead here`;
    return after === undefined ? `${ways}:` : `${ways} from the position after ${after}:`;
  },
  wayIn: (chapter: string) => `in “${chapter}”`,
  /** What the reader knows of a position, from practice. It travels to the browser as data. */
  known: { known: 'known', back: 'comes back today', met: 'met' },

  patternsTitle: 'Patterns',
  patternsLead: 'The pawn structures and set-ups that the course names, and where they stand.',
  patternFrom: (chapter: string) => `From “${chapter}”`,
};
