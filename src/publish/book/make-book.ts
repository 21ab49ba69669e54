import type { CheckedCourse } from '../../check/index.ts';
import { initialPosition } from '../../chess/index.ts';
import type { Diagnostic } from '../../diagnostics/index.ts';
import { coverJob, makeOnePng } from '../../draw/index.ts';
import { type Course, courseId, documentsInBook } from '../../model/index.ts';
import {
  contextOf,
  courseInks,
  coverPosition,
  freshParts,
  type PartMaker,
  type Parts,
  printPart,
} from '../../render/index.ts';
import { directionOf } from '../../strings/index.ts';
import { pictureFindings, wordlessFindings } from '../picture-findings.ts';
import { collectPictures } from '../pictures.ts';
import { bookCss } from './book-css.ts';
import { bookPages } from './book-pages.ts';
import { type BookPart, boardFolder, bookPart } from './chapter-part.ts';
import { faceStyles, readFaces } from './faces.ts';
import { bookPictures, picturePaths, readPictures } from './media.ts';
import { type BookItem, makePackage } from './package-document.ts';
import { nameUuid } from './uuid.ts';
import { type PackedFiles, zipBook } from './zip-book.ts';

export interface BookOptions {
  /** The course's folder, whose pictures the chapters show. */
  readonly folder: string;
  /** When the course was last changed, where that is known: the book tells it, and nothing in it is newer. */
  readonly modified?: Date | undefined;
  /** Address of the course's site; else the course's own setting. */
  readonly site?: string | undefined;
  /** Folder of finished images, kept between builds. */
  readonly cacheDir?: string | undefined;
  /** What is made of single chapters; made anew unless given. */
  readonly parts?: Parts | undefined;
  /** Files that an earlier run has packed; those that are packed now are put to them. */
  readonly packed?: PackedFiles | undefined;
  /** What an earlier run made of the same course by a name, else what is made now; as plain data. */
  readonly recall?: (<Value>(name: string, make: () => Value) => Value) | undefined;
}

/** The space of the identifiers of our books: a random UUID, never to be changed. */
const bookSpace = '0b0a3b5e-6d1f-4a52-9c0e-7f5d2c6b8e41';

/** A book must say when it was changed: the first day that the files in it can have (ZIP). */
const undated = new Date('1980-01-01T00:00:00Z');

/**
 * The course as an e-book, EPUB 3.3. The same course and options give the same bytes, and every
 * edition of a course has the same identifier.
 */
export async function makeBook(
  { course }: CheckedCourse,
  options: BookOptions,
): Promise<Uint8Array> {
  const { settings } = course;
  const boards = collectPictures(boardFolder, courseInks(course, 'two-tone'));
  const site = options.site ?? settings.site;
  const context = contextOf(course);
  const { of: partOf } = options.parts ?? freshParts(context);
  const maker = coursePart(course, options.site);
  const documents = documentsInBook(course).map((document) => ({
    file: document.file,
    title: document.title,
    part: partOf(maker, document),
  }));
  const parts = documents.map(({ part }) => part);
  const media = [
    ...(await readPictures(course, options.folder)),
    ...(await readFaces(course, options.folder)),
  ];
  const pages = bookPages(course, documents, site);
  for (const picture of parts.flatMap(({ boards }) => boards)) boards.board(picture);

  const { packed } = options;
  const drawn = await boards.draw(options.cacheDir, (key) => packed?.get(key) === undefined);
  const pictures = boards.list().map(({ src, key }) => ({
    path: src.replace('../', ''),
    type: 'image/png',
    key,
    content: () => drawn.get(src) ?? unmade(key),
  }));
  const cover = { path: 'images/cover.png', type: 'image/png', properties: 'cover-image' } as const;
  const items: BookItem[] = [
    ...pages,
    { path: 'book.css', type: 'text/css' },
    cover,
    ...pictures,
    ...media,
  ];
  const { title, language, author, summary, licence } = settings;
  const packageDocument = makePackage(
    {
      identifier: `urn:uuid:${nameUuid(bookSpace, courseId(course))}`,
      title,
      language,
      direction: directionOf(language),
      author,
      summary: summary?.trim(),
      licence,
      modified: options.modified ?? undated,
      published: options.modified,
      certified: settings.certified,
      described: parts.every(({ described }) => described),
      accessibility: context.strings.book.accessibility,
    },
    items,
  );
  const plain = (path: string, content: string | Uint8Array) => ({ path, content: () => content });
  const files = [
    plain('package.opf', packageDocument),
    ...pages.map(({ path, content }) => ({
      path,
      key: printPart(content),
      content: () => content,
    })),
    plain('book.css', bookCss + faceStyles(course)),
    plain(cover.path, await coverOf(course, options)),
    ...pictures,
    ...media.map(({ path, bytes }) => plain(path, bytes)),
  ];
  return zipBook(files, packed);
}

function unmade(key: string): never {
  throw new Error(`the board ${key} was neither kept nor drawn`);
}

/** The chapters of a course as pages of its book. @param site address of the site; else the course's own setting. */
export function coursePart(course: Course, site: string | undefined): PartMaker<BookPart> {
  return bookPart({
    site: site ?? course.settings.site,
    pictures: picturePaths(course),
    inks: courseInks(course, 'two-tone'),
  });
}

/** What a reader of the book would miss: pictures of a kind that it cannot have. */
export function bookFindings({ course }: CheckedCourse): Diagnostic[] {
  const what = { rule: 'book-picture', readers: 'e-readers' };
  const documents = documentsInBook(course);
  return [
    ...pictureFindings(documents, bookPictures, what),
    ...(course.settings.certified === undefined ? [] : wordlessFindings(documents)),
  ];
}

async function coverOf(
  course: Course,
  { cacheDir, recall = (_name, make) => make() }: BookOptions,
): Promise<Uint8Array> {
  const { title, author, language } = course.settings;
  const inks = courseInks(course, 'cloth');
  // Looked for among all positions, so the whole course would be played for it.
  const board = recall('cover of the book', () => coverBoard(course));
  return makeOnePng(coverJob({ course: title, author, language, inks, ...board }), cacheDir);
}

/** The board on the cover: the course's own position, else the one that it begins with. */
export function coverBoard(
  course: Course,
): Pick<Parameters<typeof coverJob>[0], 'placement' | 'view'> {
  const { side } = course.settings;
  const shown = coverPosition(course);
  return {
    placement: (shown?.position ?? initialPosition).fen,
    view: shown?.view ?? (side === 'black' ? 'black' : 'white'),
  };
}
