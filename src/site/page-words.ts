import type {
  BoardWords,
  ChapterWords,
  CompareWords,
  EmbedWords,
  FirstWords,
  NotesWords,
  PracticeWords,
  SearchWords,
  SettingsWords,
  SetUpWords,
  ShelfCompareWords,
  ShelfPracticeWords,
  ShelfSearchWords,
  ShelfWords,
  TreeWords,
} from '../contract/index.ts';
import type { Strings } from '../strings/index.ts';

/** What each page sends to its scripts, in the language of the course. */
function boardWords(strings: Strings): BoardWords {
  const { board, toMove, letter } = strings;
  const { marked, arrows } = letter;
  return { ...board, ...pieceWords(strings), toMove, marked, arrows };
}

export function setUpWords(strings: Strings): SetUpWords {
  return { ...boardWords(strings), setUp: strings.setUp };
}

export function chapterWords(strings: Strings, chapters: ChapterWords['chapters']): ChapterWords {
  return {
    ...boardWords(strings),
    exercise: strings.exercise,
    chapters,
    inChapter: strings.inChapter('{position}', '{chapter}'),
    gone: strings.gone,
  };
}

export function practiceWords(strings: Strings, figurines: boolean): PracticeWords {
  return { ...boardWords(strings), practice: strings.practice, figurines };
}

export function searchWords(strings: Strings): SearchWords {
  return { ...strings.finding.search, ...pieceWords(strings), toMove: strings.toMove };
}

export function treeWords(strings: Strings): TreeWords {
  return { ...strings.finding.tree, ...pieceWords(strings) };
}

export function firstWords(strings: Strings): FirstWords {
  return { ...boardWords(strings), toMove: strings.toMove, first: strings.first.talk };
}

export function shelfWords({ shelf, first }: Strings): ShelfWords {
  return { ...shelf.talk, knownOf: first.talk.knownOf };
}

export function shelfPracticeWords(strings: Strings, figurines: boolean): ShelfPracticeWords {
  const { practice, search } = strings.shelf;
  const shelf = { ...practice, notLoaded: search.notLoaded };
  return { ...practiceWords(strings, figurines), shelf };
}

export function shelfSearchWords(strings: Strings): ShelfSearchWords {
  return { ...searchWords(strings), shelf: strings.shelf.search };
}

export function compareWords(strings: Strings): CompareWords {
  const { gameLeaves, startPosition, and, someone, white, black, pieceLetters } = strings;
  return {
    ...strings.compare,
    gameLeaves,
    startPosition,
    after: strings.after('{move}'),
    inChapter: strings.inChapter('{position}', '{chapter}'),
    and,
    someone,
    white,
    black,
    letters: pieceLetters,
  };
}

export function shelfCompareWords(strings: Strings): ShelfCompareWords {
  const { compare, search } = strings.shelf;
  const { more } = strings.finding.search;
  const { notLoaded } = search;
  const shelf = { ...compare, notLoaded, more };
  return { ...compareWords(strings), shelf };
}

export function settingsWords(strings: Strings): SettingsWords {
  return { ...strings.settings, share: strings.share, letters: strings.pieceLetters };
}

export function embedWords(strings: Strings): EmbedWords {
  return { ...boardWords(strings), toMove: strings.toMove, open: strings.embed.open };
}

export function notesWords(strings: Strings): NotesWords {
  return {
    ...boardWords(strings),
    free: strings.free,
    inChapter: strings.inChapter('{position}', '{chapter}'),
  };
}

function pieceWords({ pieceLetters, pieceNames, white, black }: Strings) {
  return { letters: pieceLetters, pieces: pieceNames, white, black };
}
