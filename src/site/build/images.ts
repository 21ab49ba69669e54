import { type Color, initialPosition } from '../../chess/index.ts';
import { boardJob, cardJob, makePngs, type PngJob } from '../../draw/index.ts';
import { blockAt, type Chapter, type Course, documentsOf } from '../../model/index.ts';
import {
  cardPath,
  courseInks,
  coverPosition,
  diagramNames,
  emblematic,
  imagePath,
  newsBoards,
  newsPicture,
  pictureOf,
  printPart,
} from '../../render/index.ts';
import { positionPicture, positionPictureSize } from '../render/embed/embed-elements.ts';
import type { Embed } from '../render/embed/embeds.ts';
import { newsPictureSize } from '../render/news.ts';
import { courseIconJobs } from '../web-app/icons.ts';
import type { SiteWriter } from './site-writer.ts';

/** Width of a diagram's picture, in CSS pixels. */
const diagramWidth = 560;

/** A picture of a site. */
export interface SiteImage {
  /** Relative to the site, with `/`. */
  readonly path: string;
  readonly job: () => PngJob;
  /** A print of all that it shows. */
  readonly print: () => string;
}

/**
 * The pictures of diagrams, in single and double size, of named positions, and the cards that other sites show with links
 * to the course or a chapter.
 */
export function coursePictures(course: Course, embeds: readonly Embed[]): SiteImage[] {
  return [...diagrams(course), ...positions(course, embeds), ...inNews(course), ...cards(course)];
}

/** The course's icons. */
export function courseIcons(course: Course, own: string | undefined): SiteImage[] {
  return courseIconJobs(course, own).map(({ path, job }) => ({
    path,
    job: () => job,
    print: () => printPart(JSON.stringify(job)),
  }));
}

/** Draws pictures on all cores and writes those that the output does not have. */
export async function writeImages(
  images: readonly SiteImage[],
  writer: SiteWriter,
  options: {
    readonly cacheDir?: string | undefined;
    readonly onDone?: ((done: number, all: number) => void) | undefined;
  },
): Promise<void> {
  const missing = images
    .map((image) => ({ ...image, print: image.print() }))
    .filter(({ path, print }) => !writer.keeps(path, print));
  let done = 0;
  await makePngs(
    missing.map(({ job }) => job()),
    async (index, png) => {
      const image = missing[index];
      if (image !== undefined) await writer.write(image.path, png, image.print);
      done += 1;
      options.onDone?.(done, missing.length);
    },
    { cache: options.cacheDir },
  );
}

/** Prints the plain data that a picture is made of. */
function jobOf<About extends readonly unknown[]>(
  make: (...about: About) => PngJob,
  ...about: About
) {
  return { job: () => make(...about), print: () => printPart(JSON.stringify(about)) };
}

function diagrams(course: Course): SiteImage[] {
  const inks = courseInks(course, 'two-tone');
  return documentsOf(course).flatMap((chapter) =>
    [...diagramNames(chapter)].flatMap(([key, name]) => {
      const block = blockAt(course, { chapter: chapter.file, block: key });
      const picture = block?.kind === 'diagram' ? pictureOf(block) : undefined;
      if (picture === undefined) return [];
      return ([1, 2] as const).map((scale) => ({
        path: decodeURIComponent(imagePath(name, scale)),
        ...jobOf(boardJob, picture, { width: diagramWidth, scale, inks }),
      }));
    }),
  );
}

/** Boards of news, for feeds. */
function inNews(course: Course): SiteImage[] {
  const inks = courseInks(course, 'two-tone');
  return course.news.flatMap((news) =>
    newsBoards(news, course)
      .flatMap((block) => pictureOf(block) ?? [])
      .map((picture, index) => ({
        path: decodeURIComponent(newsPicture(news, index + 1)),
        ...jobOf(boardJob, picture, { width: newsPictureSize, inks }),
      })),
  );
}

/** Named positions, which other sites may show with a link. */
function positions(course: Course, embeds: readonly Embed[]): SiteImage[] {
  const inks = courseInks(course, 'two-tone');
  return embeds.map((embed) => ({
    path: decodeURIComponent(positionPicture(embed)),
    ...jobOf(boardJob, embed.picture, { width: positionPictureSize, inks }),
  }));
}

function cards(course: Course): SiteImage[] {
  const { title, author, language, side, card: ownCard } = course.settings;
  const inks = courseInks(course, 'cloth');
  const startView: Color = side === 'black' ? 'black' : 'white';
  const card = (chapter?: Chapter): SiteImage => {
    const emblem = chapter && emblematic(chapter);
    const { position, view } = emblem
      ? { position: emblem.position, view: emblem.block.view }
      : { view: startView, position: initialPosition, ...(chapter ? {} : coverPosition(course)) };
    const about = {
      course: title,
      chapter: chapter?.title,
      author,
      placement: position.fen,
      view,
      language,
      ...(inks && { inks }),
    };
    return { path: decodeURIComponent(cardPath(chapter)), ...jobOf(cardJob, about) };
  };
  // An author's card replaces the course's own.
  return [
    ...(ownCard === undefined ? [card()] : []),
    ...course.chapters.map((chapter) => card(chapter)),
  ];
}
