import { type Color, initialPosition } from '../../chess/index.ts';
import { boardJob, cardJob, makePngs, type PngJob } from '../../draw/index.ts';
import { type Chapter, type Course, documentsOf } from '../../model/index.ts';
import {
  cardPath,
  contextOf,
  courseInks,
  coverPosition,
  freshParts,
  imagePath,
  newsBoards,
  newsPicture,
  type Parts,
  pictureOf,
  printPart,
} from '../../render/index.ts';
import { picturesPart } from '../render/chapter-pictures.ts';
import { positionPicture, positionPictureSize } from '../render/embed/embed-elements.ts';
import type { Embed } from '../render/embed/embeds.ts';
import { newsPictureSize } from '../render/news.ts';
import { courseIconJobs } from '../web-app/icons.ts';
import type { SiteWriter } from './site-writer.ts';

/** Width of a diagram's picture, in CSS pixels. */
const diagramWidth = 560;

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
 * @param parts of chapters; default: made when asked for.
 */
export function coursePictures(
  course: Course,
  embeds: readonly Embed[],
  parts: Parts = freshParts(contextOf(course)),
): SiteImage[] {
  return [
    ...diagrams(course, parts),
    ...positions(course, embeds),
    ...inNews(course),
    ...cards(course, parts),
  ];
}

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
    /** `SiteOptions.onDrawing` */
    readonly onDrawing?: (() => void) | undefined;
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
    { cache: options.cacheDir, onProcesses: options.onDrawing },
  );
}

/** Prints the plain data that a picture is made of. */
function jobOf<About extends readonly unknown[]>(
  make: (...about: About) => PngJob,
  ...about: About
) {
  return { job: () => make(...about), print: () => printPart(JSON.stringify(about)) };
}

function diagrams(course: Course, parts: Parts): SiteImage[] {
  const inks = courseInks(course, 'two-tone');
  return documentsOf(course).flatMap((chapter) =>
    parts.of(picturesPart, chapter).diagrams.flatMap(([name, picture]) =>
      ([1, 2] as const).map((scale) => ({
        path: decodeURIComponent(imagePath(name, scale)),
        ...jobOf(boardJob, picture, { width: diagramWidth, scale, inks }),
      })),
    ),
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

function cards(course: Course, parts: Parts): SiteImage[] {
  const { title, author, language, side, card: ownCard } = course.settings;
  const inks = courseInks(course, 'cloth');
  const startView: Color = side === 'black' ? 'black' : 'white';
  const card = (chapter?: Chapter): SiteImage => {
    const shown = chapter ? parts.of(picturesPart, chapter).emblem : onCover(course);
    const about = {
      course: title,
      chapter: chapter?.title,
      author,
      placement: shown?.placement ?? initialPosition.fen,
      view: shown?.view ?? startView,
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

function onCover(course: Course) {
  const shown = coverPosition(course);
  return shown && { placement: shown.position.fen, view: shown.view };
}
