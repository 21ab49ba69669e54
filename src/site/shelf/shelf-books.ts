import type { BuiltCourse, ShelfCourse, ShelfTable } from '../../contract/index.ts';
import { dayInWords } from '../../strings/index.ts';
import { splitTitle } from '../split-title.ts';
import type { ShelfBook, ShelfEntry } from './shelf-data.ts';

/** So many news stand on the first page; the feed has all. */
const newsShown = 5;

export function booksOf(built: readonly BuiltCourse[]): ShelfBook[] {
  return built.map((course, index) => {
    const { author, summary, cover, files } = course;
    return {
      at: folderOf(course),
      course: course.course,
      title: course.title,
      ...splitTitle(course.title),
      language: course.language,
      side: course.side,
      ...(author !== undefined && { author }),
      ...(summary !== undefined && { summary }),
      chapters: course.chapters,
      minutes: course.minutes,
      moves: course.moves,
      ...(cover !== undefined && { board: cover.board }),
      languages: course.languages ?? [],
      cloth: `cloth-${index + 1}`,
      pages: files.filter((file) => /^[\w-]+\.html$/.test(file)),
    };
  });
}

/** What the scripts of the shelf load of each course. @throws where a course has not the data that every build writes. */
export function tableOf(built: readonly BuiltCourse[]): ShelfTable {
  return {
    courses: built.map((course): ShelfCourse => {
      const { title, language, side, chapters } = course;
      const table = dataFile(course, 'course-table');
      const notes = dataFile(course, 'course-notes');
      const translations = translationsOf(course);
      if (table === undefined) throw new Error(`${course.id} was built without its table`);
      return {
        ...{ course: course.course, title, language, side, chapters, table },
        shortTitle: splitTitle(title).shortTitle,
        at: folderOf(course),
        ...(notes !== undefined && { notes }),
        ...(translations.length > 0 && { translations }),
      };
    }),
  };
}

function translationsOf(course: BuiltCourse): NonNullable<ShelfCourse['translations']> {
  return (course.languages ?? []).flatMap(({ tag }) => {
    const table = dataFile(course, 'course-table', `${tag}/`);
    return table === undefined ? [] : [{ language: tag, at: `${folderOf(course)}${tag}/`, table }];
  });
}

export function latestNews(built: readonly BuiltCourse[], language: string): ShelfEntry[] {
  return built
    .flatMap((course) =>
      course.news.map(({ title, date, href }) => ({
        title,
        date,
        day: dayInWords(date, language),
        href: folderOf(course) + href,
        course: splitTitle(course.title).shortTitle,
        language: course.language,
      })),
    )
    .sort((a, b) => (a.date < b.date ? 1 : a.date > b.date ? -1 : 0))
    .slice(0, newsShown);
}

export function folderOf({ id }: BuiltCourse): string {
  return `${encodeURIComponent(id)}/`;
}

/**
 * A script with data, whose name has its edition: `course-table.0123456789ab.js`.
 * @param within its folder in that of the course, with a final `/`; the course's own unless said.
 */
function dataFile({ files }: BuiltCourse, name: string, within = ''): string | undefined {
  const isScript = /^[\w-]+\.[0-9a-f]+\.js$/;
  return files
    .flatMap((file) => (file.startsWith(within) ? [file.slice(within.length)] : []))
    .find((file) => file.startsWith(`${name}.`) && isScript.test(file));
}
