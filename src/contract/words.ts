import type { Strings } from '../strings/index.ts';

/**
 * The words that pages send to their scripts, in the language of the course: sections of the catalogue as they
 * are, and sentences whose gaps the browser fills. Both sides have these types from here, so a word that one
 * of them does not know is a fault of compiling.
 */
export interface PageWords {
  readonly board: BoardWords;
  readonly setUp: SetUpWords;
  readonly chapter: ChapterWords;
  readonly practice: PracticeWords;
  readonly positions: Strings['finding']['known'];
  readonly search: SearchWords;
  readonly tree: TreeWords;
  readonly first: FirstWords;
  readonly compare: CompareWords;
  readonly embed: EmbedWords;
  readonly exercises: Strings['exercises']['results'];
  readonly settings: SettingsWords;
  readonly notes: NotesWords;
  readonly shelf: ShelfWords;
  readonly shelfSearch: ShelfSearchWords;
  readonly shelfPractice: ShelfPracticeWords;
  readonly shelfCompare: ShelfCompareWords;
}

/** How pieces and sides are called. */
export interface PieceWords {
  readonly letters: Strings['pieceLetters'];
  readonly pieces: Strings['pieceNames'];
  readonly white: string;
  readonly black: string;
}

export type BoardWords = Strings['board'] &
  PieceWords &
  Pick<Strings, 'toMove'> &
  Pick<Strings['letter'], 'marked' | 'arrows'>;

/** Where pieces are set by hand. */
export type SetUpWords = BoardWords & Pick<Strings, 'setUp'>;

export type ChapterWords = BoardWords &
  Pick<Strings, 'exercise' | 'gone'> & {
    /** Titles of other chapters, by the addresses of their pages. */
    readonly chapters: Readonly<Record<string, string>>;
    /** `{position} in “{chapter}”`. */
    readonly inChapter: string;
  };

export type PracticeWords = BoardWords &
  Pick<Strings, 'practice'> & {
    /** Moves are printed with figures instead of letters. */
    readonly figurines: boolean;
  };

/** What a move of the course is called. */
export interface MoveWords {
  readonly letters: Strings['pieceLetters'];
  /** What each kind of move is called; empty for what needs no word. */
  readonly kinds: Readonly<Record<'advice' | 'option' | 'bad' | 'reply', string>>;
}

export type SearchWords = Strings['finding']['search'] & PieceWords & Pick<Strings, 'toMove'>;

export type TreeWords = Strings['finding']['tree'] & PieceWords;

/** Of the first page. */
export type FirstWords = BoardWords &
  Pick<Strings, 'toMove'> & { readonly first: Strings['first']['talk'] };

/** Of the search over all courses of a shelf. */
export type ShelfSearchWords = SearchWords & { readonly shelf: Strings['shelf']['search'] };

/** Of practice over all courses of a shelf. */
export type ShelfPracticeWords = PracticeWords & {
  readonly shelf: Strings['shelf']['practice'] & Pick<Strings['shelf']['search'], 'notLoaded'>;
};

/** Of the first page of a shelf. */
export type ShelfWords = Strings['shelf']['talk'] & Pick<Strings['first']['talk'], 'knownOf'>;

export type CompareWords = Strings['compare'] &
  Omit<PieceWords, 'pieces'> &
  Pick<Strings, 'gameLeaves' | 'startPosition' | 'and' | 'someone'> & {
    /** `after {move}`. */
    readonly after: string;
    readonly inChapter: string;
  };

/** Of games that are compared with all courses of a shelf. */
export type ShelfCompareWords = CompareWords & {
  readonly shelf: Strings['shelf']['compare'] &
    Pick<Strings['shelf']['search'], 'notLoaded'> &
    Pick<Strings['finding']['search'], 'more'>;
};

/** The form of the reader's settings. */
export type SettingsWords = Strings['settings'] & {
  readonly share: Strings['share'];
  /** The letters of the pieces in the language of the course. */
  readonly letters: Strings['pieceLetters'];
};

/** What a reader is told who plays freely; loaded with the script that needs it. */
export type FreeWords = Strings['free'];

/** The page of the reader's own notes. */
export type NotesWords = BoardWords &
  Pick<Strings, 'free'> & {
    /** `{position} in “{chapter}”`. */
    readonly inChapter: string;
  };

export type EmbedWords = BoardWords &
  Pick<Strings, 'toMove'> & {
    /** Leads into the course. */
    readonly open: string;
  };

/** The words of a page as they are sent; `wordsOf` reads them again. */
export function writeWords<Kind extends keyof PageWords>(
  _kind: Kind,
  words: PageWords[Kind],
): string {
  return JSON.stringify(words);
}
