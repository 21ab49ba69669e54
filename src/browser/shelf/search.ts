/** The script of the search over all courses of a shelf: words, positions, boards. */
import { dataOf } from '../../contract/attributes.ts';
import type { CourseTable } from '../../contract/course-table.ts';
import { fill } from '../../contract/sentence.ts';
import type { ShelfCourse } from '../../contract/shelf-table.ts';
import { findPlacement } from '../../lookup/search/find-placement.ts';
import { type PositionSearch, searchPositions } from '../../lookup/search/search-positions.ts';
import { wordsOf } from '../board/board-words.ts';
import { counted } from '../counted.ts';
import { element } from '../element.ts';
import { inLanguageOf } from '../in-language-of.ts';
import { answerPlacement, answerPosition } from '../search/answer-position.ts';
import { answerWords } from '../search/search-by-words.ts';
import type { SearchResult } from '../search/search-result.ts';
import { startSearch } from '../search/start-search.ts';
import { givenCourses, loadTable } from './load-course.ts';

/** What a course of the shelf answers. */
interface CourseResult extends SearchResult {
  /** Whether it has anything of what was asked for. */
  readonly has: boolean;
  /** The course that has more of it comes first; absent where nothing could be looked up. */
  readonly rank?: number | undefined;
}

const shownAtOnce = 3;

const place = document.querySelector<HTMLElement>('.course-search');
if (place !== null) searchShelf(place);

function searchShelf(place: HTMLElement): void {
  const words = wordsOf(place, 'shelfSearch');
  const { probe = '' } = dataOf('page', place);
  const courses = givenCourses(place);
  const sides = new Set(courses.map(({ side }) => side));

  type AnswerIn = (table: CourseTable) => CourseResult | Promise<CourseResult>;
  const answersOf = (some: readonly ShelfCourse[], answerIn: AnswerIn) =>
    Promise.all(
      some.map(async (course) => {
        const table = await loadTable(course).catch(() => undefined);
        const answer = table ? await answerIn(table) : notLoaded(course);
        return { course: { ...course, title: table?.title ?? course.title }, answer };
      }),
    );
  const inAll = async (
    answerIn: AnswerIn,
    nowhere: string = words.shelf.nowhere,
    inTranslations: 'too' | 'not' = 'not',
  ): Promise<SearchResult> => {
    const answers = await answersOf(courses, answerIn);
    const [first] = answers;
    const isHindered = answers.every(({ answer }) => !answer.has && answer.rank === undefined);
    // Each would say the same: that the text is no position, or that no index can be read here.
    if (first !== undefined && isHindered) return first.answer;
    const having = answers.filter(({ answer }) => answer.has);
    having.sort((a, b) => (b.answer.rank ?? 0) - (a.answer.rank ?? 0));
    if (inTranslations === 'too') {
      const translated = await answersOf(translationsOf(courses, having.length === 0), answerIn);
      having.push(...translated.filter(({ answer }) => answer.has));
    }
    // A course that could not be searched may have it.
    const others = answers.filter(({ answer }) => !answer.has && answer.rank === undefined);
    const status = having.length === 0 ? nowhere : counted(words.shelf.inCourses, having.length);
    return {
      status: [status],
      found: [...having, ...others].map(({ course, answer }) => group(course, answer)),
    };
  };
  const notLoaded = ({ title }: ShelfCourse): CourseResult => ({
    status: [fill(words.shelf.notLoaded, { course: title })],
    found: [],
    has: false,
  });

  startSearch(place, {
    words,
    forWords: (query) =>
      inAll(
        async (table) => {
          const { count, ...answer } = await answerWords(query, table, words, probe, shownAtOnce);
          const has = (count ?? 0) > 0 || answer.found.length > 0;
          // In the order of the shelf: how many chapters have the words says little of courses of all sizes.
          return { ...answer, has, rank: count && 0 };
        },
        fill(words.noWords, { words: query.replaceAll('"', '') }),
        'too',
      ),
    forPosition: (text) =>
      inAll((table) => {
        const search = searchPositions(table, text, words.letters);
        return { ...answerPosition(table, search, words), ...inCourse(search) };
      }),
    onBoard: {
      view: sides.size === 1 && sides.has('black') ? 'black' : 'white',
      answerTo: (placement) =>
        inAll((table) => {
          const search = findPlacement(table, placement);
          return {
            ...answerPlacement(table, search, words),
            ...inCourse({ kind: 'placement', ...search }),
          };
        }),
    },
  });
}

/**
 * The courses in their other languages: those that the reader's browser asks for, so that no other index is loaded.
 * @param all whether every language is looked in, since nothing was found.
 */
function translationsOf(courses: readonly ShelfCourse[], all: boolean): ShelfCourse[] {
  const primary = (tag: string) => tag.toLowerCase().split('-')[0];
  const read = new Set(navigator.languages.map(primary));
  return courses.flatMap((course) =>
    (course.translations ?? []).flatMap((translation) =>
      all || read.has(primary(translation.language)) ? [{ ...course, ...translation }] : [],
    ),
  );
}

/** How much of what was asked for a course has. */
function inCourse(search: PositionSearch): Pick<CourseResult, 'has' | 'rank'> {
  switch (search.kind) {
    case 'position':
      return {
        has: search.exact !== undefined || search.alike.length > 0,
        rank: search.exact === undefined ? 0 : 1,
      };
    case 'placement':
      return {
        has: search.exact.length + search.holding.length > 0,
        rank: search.exact.length > 0 ? 1 : 0,
      };
    case 'moves':
      // From the start every course that begins there knows nothing of them yet.
      if (search.played.length === 0) return { has: false };
      return { has: (search.knownPlies ?? 0) > 0, rank: search.knownPlies ?? 0 };
    default:
      return { has: false };
  }
}

/** What a course answers, below its title. */
function group(course: ShelfCourse, { status, found }: SearchResult): HTMLElement {
  const { title, at } = course;
  return element(
    'section',
    { class: 'in-course' },
    element('h3', {}, element('a', { href: `${at}index.html`, ...inLanguageOf(course) }, title)),
    element('p', {}, status),
    found,
  );
}
