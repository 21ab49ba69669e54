import type { Heading } from 'mdast';
import { toString as plainText } from 'mdast-util-to-string';
import { chapterIds } from '../../addresses/index.ts';
import { nearestName, type Place } from '../../diagnostics/index.ts';
import { type Chapter, type Course, documentsOf, slug } from '../../model/index.ts';
import { newsChapter, newsId, newsPage } from '../../render/index.ts';
import { stringsFor } from '../../strings/index.ts';
import { PublishError } from '../publish-error.ts';
import { headingsOf, narrowChapter } from './narrow-chapter.ts';
import { positionChapter } from './position-chapter.ts';

/** A chapter, a part of one, named positions, or news of the course: the latest unless named. */
export type LetterChoice =
  | { readonly chapter: string; readonly section?: string | undefined }
  | { readonly positions: readonly string[] }
  | { readonly news: string | undefined };

export interface LetterText {
  readonly title: string;
  /** What it is a part of. */
  readonly above?: string;
  readonly summary?: string;
  /** Names the letter's folder. */
  readonly name: string;
  /** Whole chapters, or what was cut from them. */
  readonly chapters: readonly Chapter[];
  /** Where it begins in the author's files. */
  readonly place: Place;
  /** The headings by which it can be divided. */
  readonly sections: readonly string[];
  /** Where all of it stands in the site, if it stands on one page. */
  readonly page?: string;
}

/** @throws PublishError for what the course does not have. */
export function chooseText(course: Course, choice: LetterChoice): LetterText {
  if ('positions' in choice) return choosePositions(course, choice.positions);
  if ('news' in choice) return chooseNews(course, choice.news);
  const chapter = findChapter(course, choice.chapter);
  const start = { line: 1, column: 1, offset: 0 };
  const whole = { file: chapter.file, start, end: start };
  if (choice.section === undefined) {
    const { title, summary, id } = chapter;
    return {
      title,
      ...(summary !== undefined && { summary }),
      name: id,
      chapters: [chapter],
      place: whole,
      sections: headingsOf(chapter).map((heading) => plainText(heading)),
      page: pageOf(chapter),
    };
  }
  const heading = findSection(chapter, choice.section);
  const part = narrowChapter(chapter, heading);
  const title = plainText(heading);
  const { position } = heading;
  return {
    title,
    above: chapter.title,
    name: `${chapter.id}-${slug(title)}`,
    chapters: [part],
    place: position ? placeOf(chapter.file, position) : whole,
    sections: headingsOf(part).map((part) => plainText(part)),
    page: `${pageOf(chapter)}#${encodeURIComponent(chapterIds(chapter).ofHeading(heading) ?? '')}`,
  };
}

function placeOf(file: string, { start, end }: NonNullable<Heading['position']>): Place {
  return {
    file,
    start: { ...start, offset: start.offset ?? 0 },
    end: { ...end, offset: end.offset ?? 0 },
  };
}

/** By its id, its number, its file or its title. A page is found as a chapter is, but for a number. */
function findChapter(course: Course, name: string): Chapter {
  const { chapters } = course;
  const all = documentsOf(course);
  const found =
    all.find(({ id }) => id === name) ??
    chapters.find((_, index) => String(index + 1) === name) ??
    all.find(({ file }) => [name, `chapters/${name}`, `pages/${name}`].includes(file)) ??
    all.find(({ title }) => title === name);
  if (found) return found;
  throw missing(
    `there is no chapter \`${name}\``,
    name,
    all.map(({ id }) => id),
    'the chapters are',
  );
}

function findSection(chapter: Chapter, name: string) {
  const headings = headingsOf(chapter);
  const found =
    headings.find((heading) => plainText(heading) === name) ??
    headings.find((heading) => slug(plainText(heading)) === slug(name));
  if (found) return found;
  const beginning = headings.filter((heading) => slug(plainText(heading)).startsWith(slug(name)));
  const [only] = beginning;
  if (only !== undefined && beginning.length === 1) return only;
  throw missing(
    `the chapter “${chapter.title}” has no heading \`${name}\``,
    name,
    headings.map((heading) => plainText(heading)),
    'its headings are',
  );
}

function choosePositions(course: Course, names: readonly string[]): LetterText {
  const strings = stringsFor(course.settings.language, course.settings.notation);
  const labels = names.map((name) => {
    const label = Object.hasOwn(course.labels, name) ? course.labels[name] : undefined;
    if (label) return label;
    throw missing(
      `no position of the course is named \`${name}\``,
      name,
      Object.keys(course.labels),
      'the named positions are',
    );
  });
  const [first] = labels;
  if (first === undefined) {
    throw new PublishError(
      'no position is named',
      'give their names, such as `--positions main,iqp`',
    );
  }
  return {
    title: strings.letter.positionsTitle,
    name: `positions-${names.map(slug).join('-')}`.slice(0, 80),
    chapters: labels.map((label) => positionChapter(course, label, strings)),
    place: first.place,
    sections: [],
  };
}

/** What the author tells of an edition, by the name of its file; the latest stands first. */
function chooseNews(course: Course, name: string | undefined): LetterText {
  const { news } = course;
  const wanted = name?.replace(/^.*\/|\.md$/g, '');
  const found = wanted === undefined ? news[0] : news.find((each) => each.name === wanted);
  if (found === undefined) {
    if (name !== undefined) {
      const names = news.map((each) => each.name);
      throw missing(`there is no news \`${name}\``, name, names, 'the news are');
    }
    throw new PublishError(
      'the course has no news',
      'write a file in `news/`, or let `linewright changes OLD NEW --write` begin one',
    );
  }
  const { title, file } = found;
  const start = { line: 1, column: 1, offset: 0 };
  return {
    title,
    name: `news-${slug(found.name)}`,
    chapters: [newsChapter(found, course)],
    place: { file, start, end: start },
    sections: [],
    page: `${newsPage}#${encodeURIComponent(newsId(found))}`,
  };
}

function pageOf({ id }: Chapter): string {
  return `${encodeURI(id)}.html`;
}

function missing(
  message: string,
  name: string,
  known: readonly string[],
  list: string,
): PublishError {
  const near = nearestName(name, known);
  if (near !== undefined) return new PublishError(message, `did you mean \`${near}\`?`);
  if (known.length === 0) return new PublishError(message, 'it has none');
  const shown = known.slice(0, 12).map((each) => `\`${each}\``);
  return new PublishError(message, `${list} ${shown.join(', ')}${known.length > 12 ? ', …' : ''}`);
}
