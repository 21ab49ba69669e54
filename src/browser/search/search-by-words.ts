import type { CourseTable } from '../../contract/course-table.ts';
import { fill } from '../../contract/sentence.ts';
import type { SearchWords } from '../../contract/words.ts';
import { counted } from '../counted.ts';
import { element } from '../element.ts';
import { type Answer, showAnswer } from './answer.ts';
import { cappedList } from './capped-list.ts';
import { chapterFound } from './chapter-found.ts';
import { positionList } from './position-list.ts';
import { searchIndex, WasmForbidden } from './word-index.ts';

/** So many chapters are searched for their parts. */
const chaptersRead = 30;
const shownAtOnce = 10;

/**
 * Searches the names of positions and the text of the chapters.
 * @param probe see `mayRunWasm`
 */
export function makeWordSearch(
  section: Element,
  table: CourseTable,
  words: SearchWords,
  probe: string,
) {
  let asked = 0;
  return async (text: string): Promise<void> => {
    const mine = ++asked;
    const query = text.trim();
    if (query === '') return showAnswer(section, { status: [words.emptyWords], found: [] });
    const named = namesFound(table, query, words);
    if (location.protocol === 'file:') {
      return showAnswer(section, { status: [words.fromFolder], found: named });
    }
    section.querySelector('.status')?.replaceChildren(words.searching);
    const search = searchIndex(query, probe).then((results) =>
      inText(results, query, named, words),
    );
    const answer = await search.catch((error: unknown): Answer => {
      if (error instanceof WasmForbidden) return { status: [words.noWasm], found: named };
      console.error(error);
      return { status: [words.noIndex], found: named };
    });
    // Of two searches the later one counts, however long each takes.
    if (mine === asked) showAnswer(section, answer);
  };
}

async function inText(
  results: Awaited<ReturnType<typeof searchIndex>>,
  query: string,
  named: readonly Node[],
  words: SearchWords,
): Promise<Answer> {
  const chapters = await Promise.all(results.slice(0, chaptersRead).map((result) => result.data()));
  const status =
    results.length === 0
      ? fill(words.noWords, { words: query })
      : counted(words.chaptersFound, results.length);
  const list = cappedList(chapters, shownAtOnce, words.more, (chapter) =>
    chapterFound(chapter, words),
  );
  return { status: [status], found: [...named, ...(chapters.length > 0 ? list : [])] };
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
