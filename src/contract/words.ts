import type { Strings } from '../strings/index.ts';

/**
 * The words that pages send to their scripts, in the language of the course: sections of the catalogue as they
 * are, and sentences whose gaps the browser fills. Both sides take their types from here, so a word that one of
 * them does not know does not compile.
 */
const words = {
  board: boardWords,
  setUp: (strings: Strings) => ({ ...boardWords(strings), setUp: strings.setUp }),
  /** @param chapters titles of other chapters, by the addresses of their pages. */
  chapter: (strings: Strings, chapters: Readonly<Record<string, string>>) => ({
    ...boardWords(strings),
    exercise: strings.exercise,
    chapters,
    inChapter: inChapter(strings),
    gone: strings.gone,
  }),
  practice: practiceWords,
  positions: ({ finding }: Strings) => finding.known,
  search: searchWords,
  tree: (strings: Strings) => ({ ...strings.finding.tree, ...pieceWords(strings) }),
  first: (strings: Strings) => ({ ...boardWords(strings), first: strings.first.talk }),
  compare: compareWords,
  embed: (strings: Strings) => ({ ...boardWords(strings), open: strings.embed.open }),
  exercises: ({ exercises }: Strings) => exercises.results,
  settings: ({ settings, share, pieceLetters }: Strings) => ({
    ...settings,
    share,
    letters: pieceLetters,
  }),
  notes: (strings: Strings) => ({
    ...boardWords(strings),
    free: strings.free,
    inChapter: inChapter(strings),
  }),
  shelf: ({ shelf, first }: Strings) => ({ ...shelf.talk, knownOf: first.talk.knownOf }),
  shelfSearch: (strings: Strings) => ({ ...searchWords(strings), shelf: strings.shelf.search }),
  shelfPractice: (strings: Strings, figurines: boolean) => {
    const { practice, search } = strings.shelf;
    const shelf = { ...practice, notLoaded: search.notLoaded };
    return { ...practiceWords(strings, figurines), shelf };
  },
  shelfCompare: (strings: Strings) => {
    const { compare, search } = strings.shelf;
    const shelf = {
      ...compare,
      notLoaded: search.notLoaded,
      more: strings.finding.search.more,
    };
    return { ...compareWords(strings), shelf };
  },
};

type Words = typeof words;
type Given = { readonly [Kind in keyof Words]: Parameters<Words[Kind]> };

export type PageWords = { readonly [Kind in keyof Words]: ReturnType<Words[Kind]> };
export type BoardWords = PageWords['board'];
export type ChapterWords = PageWords['chapter'];
export type CompareWords = PageWords['compare'];
export type EmbedWords = PageWords['embed'];
export type NotesWords = PageWords['notes'];
export type PracticeWords = PageWords['practice'];
export type SearchWords = PageWords['search'];
export type SettingsWords = PageWords['settings'];
export type ShelfCompareWords = PageWords['shelfCompare'];
export type ShelfPracticeWords = PageWords['shelfPractice'];
export type ShelfWords = PageWords['shelf'];
export type TreeWords = PageWords['tree'];
/** For readers who play freely; loaded with the script that needs it. */
export type FreeWords = Strings['free'];

/** How pieces and sides are called. */
export type PieceWords = ReturnType<typeof pieceWords>;

/** What a move of the course is called. */
export interface MoveWords {
  readonly letters: Strings['pieceLetters'];
  /** What each kind of move is called; empty for what needs no word. */
  readonly kinds: Readonly<Record<'advice' | 'option' | 'bad' | 'reply', string>>;
}

/** The words of a kind of page, in the language of the catalogue that is given. */
export function pageWords<Kind extends keyof Words>(
  kind: Kind,
  ...given: Given[Kind]
): PageWords[Kind] {
  const table: { readonly [Each in keyof Words]: (...given: Given[Each]) => PageWords[Each] } =
    words;
  return table[kind](...given);
}

/** The same as they are sent; `wordsOf` reads them again. */
export function writeWords<Kind extends keyof Words>(kind: Kind, ...given: Given[Kind]): string {
  return JSON.stringify(pageWords(kind, ...given));
}

function pieceWords({ pieceLetters, pieceNames, white, black }: Strings) {
  return { letters: pieceLetters, pieces: pieceNames, white, black };
}

function boardWords(strings: Strings) {
  const { board, toMove, letter } = strings;
  const { marked, arrows } = letter;
  return { ...board, ...pieceWords(strings), toMove, marked, arrows };
}

/** @param figurines whether moves are printed with figures instead of letters. */
function practiceWords(strings: Strings, figurines: boolean) {
  return { ...boardWords(strings), practice: strings.practice, figurines };
}

function searchWords(strings: Strings) {
  return { ...strings.finding.search, ...pieceWords(strings), toMove: strings.toMove };
}

function compareWords(strings: Strings) {
  const { gameLeaves, startPosition, and, someone, white, black, pieceLetters } = strings;
  return {
    ...strings.compare,
    gameLeaves,
    startPosition,
    after: strings.after('{move}'),
    inChapter: inChapter(strings),
    and,
    someone,
    white,
    black,
    letters: pieceLetters,
  };
}

function inChapter(strings: Strings): string {
  return strings.inChapter('{position}', '{chapter}');
}
