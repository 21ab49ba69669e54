import type { CourseTable } from '../../contract/course-table.ts';
import { fill } from '../../contract/sentence.ts';
import type { SearchWords } from '../../contract/words.ts';
import { counted } from '../counted.ts';
import { element } from '../element.ts';
import { cappedList } from './capped-list.ts';
import { chapterFound } from './chapter-found.ts';
import { positionList } from './position-list.ts';
import { searchText, type TextFound } from './search-phrase.ts';
import { type SearchResult, showResult } from './search-result.ts';
import { WasmForbidden } from './word-index.ts';

const shownAtOnce = 10;

/** What a search for words found in a course. */
export interface WordResult extends SearchResult {
  /** How many chapters have the words; absent where their text could not be searched. */
  readonly count?: number;
}

export function makeWordSearch(
  section: Element,
  words: SearchWords,
  answerTo: (query: string) => Promise<SearchResult>,
) {
  let asked = 0;
  return async (text: string): Promise<void> => {
    const mine = ++asked;
    const query = text.trim();
    if (query === '') return showResult(section, { status: [words.emptyWords], found: [] });
    section.querySelector('.status')?.replaceChildren(words.searching);
    const answer = await answerTo(query);
    // Of two searches the later one counts, however long each takes.
    if (mine === asked) showResult(section, answer);
  };
}

/**
 * Searches the names of positions and the text of the chapters.
 * @param probe see `mayRunWasm`
 * @param step so many chapters are shown at once.
 */
export async function answerWords(
  query: string,
  table: CourseTable,
  words: SearchWords,
  probe: string,
  step = shownAtOnce,
): Promise<WordResult> {
  const named = namesFound(table, query, words);
  if (location.protocol === 'file:') return { status: [words.fromFolder], found: named };
  const { at, chapters } = table;
  try {
    const found = await searchText(query, { chapters: chapters.length, at, probe });
    return inText(found, { query, named, table, words, step });
  } catch (error) {
    if (error instanceof WasmForbidden) return { status: [words.noWasm], found: named };
    console.error(error);
    return { status: [words.noIndex], found: named };
  }
}

interface Around {
  readonly query: string;
  readonly named: readonly Node[];
  readonly table: CourseTable;
  readonly words: SearchWords;
  readonly step: number;
}

function inText(
  { count, chapters, phraseFirst }: TextFound,
  { query, named, table, words, step }: Around,
): WordResult {
  const status =
    count === 0
      ? fill(words.noWords, { words: query.replaceAll('"', '') })
      : counted(words.chaptersFound, count) + (phraseFirst ? ` ${words.phraseFirst}` : '');
  const list = cappedList(chapters, { step, more: words.more }, (chapter) =>
    chapterFound(chapter, table, words),
  );
  return { status: [status], found: [...named, ...(chapters.length > 0 ? list : [])], count };
}

function namesFound(table: CourseTable, query: string, words: SearchWords): Node[] {
  const wanted = plain(query);
  if (wanted === '') return [];
  const found = table.positions.flatMap(({ title = '' }, index) =>
    plain(title).includes(wanted) ? [index] : [],
  );
  if (found.length === 0) return [];
  return [
    element('p', { class: 'found-chapter' }, words.namesFound),
    ...positionList(table, found, words),
  ];
}

/** As people type it: without accents, capitals, and signs but letters and digits. */
function plain(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/[\p{M}'’]/gu, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
    .toLowerCase();
}
