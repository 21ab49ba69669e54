import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { initialPosition } from '../../chess/index.ts';
import { cardJob, drawBoard, makePngs, type PngJob } from '../../draw/index.ts';
import { blockAt, type Chapter, type Course } from '../../model/index.ts';
import { cardPath, diagramNames, emblematic, imagePath, pictureOf } from '../../render/index.ts';
import { positionPicture } from '../render/embed-pages.ts';
import type { Embed } from '../render/embeds.ts';
import { iconJobs } from '../web-app/icons.ts';

/** Width of a diagram's picture, in CSS pixels. */
const diagramWidth = 560;

interface NamedJob {
  readonly path: string;
  readonly job: PngJob;
}

/**
 * Writes the pictures of all diagrams, once and in double size, of named positions, and the cards
 * that other sites show beside a link to the course or a chapter; returns their paths. The icons
 * are written as well.
 */
export async function writeImages(
  course: Course,
  embeds: readonly Embed[],
  out: string,
  options: {
    readonly cacheDir?: string | undefined;
    readonly onDone?: ((done: number, all: number) => void) | undefined;
  },
): Promise<string[]> {
  const pictures = [...diagramJobs(course), ...positionJobs(embeds), ...cardJobs(course)];
  const jobs = [...pictures, ...iconJobs(course)];
  const writes: Promise<void>[] = [];
  for (const folder of ['cards', 'icons', 'positions']) {
    await mkdir(join(out, 'images', folder), { recursive: true });
  }
  await makePngs(
    jobs.map(({ job }) => job),
    (index, png) => {
      const path = jobs[index]?.path;
      if (path !== undefined) {
        const write = writeFile(join(out, path), png);
        writes.push(write);
        // Waited for below; a fault that comes before is none that nobody hears of.
        write.catch(() => {});
      }
      options.onDone?.(writes.length, jobs.length);
    },
    { cache: options.cacheDir },
  );
  await Promise.all(writes);
  return pictures.map(({ path }) => path);
}

function diagramJobs(course: Course): NamedJob[] {
  return course.chapters.flatMap((chapter) =>
    [...diagramNames(chapter)].flatMap(([key, name]) => {
      const block = blockAt(course, { chapter: chapter.file, block: key });
      const picture = block?.kind === 'diagram' ? pictureOf(block) : undefined;
      if (picture === undefined) return [];
      const svg = drawBoard({ ...picture, theme: 'two-tone' });
      return ([1, 2] as const).map((scale) => ({
        path: decodeURIComponent(imagePath(name, scale)),
        job: { svg, width: diagramWidth, scale },
      }));
    }),
  );
}

/** Named positions, which other sites may show with a link. */
function positionJobs(embeds: readonly Embed[]): NamedJob[] {
  return embeds.map((embed) => ({
    path: decodeURIComponent(positionPicture(embed)),
    job: { svg: drawBoard({ ...embed.picture, theme: 'two-tone' }), width: diagramWidth },
  }));
}

function cardJobs(course: Course): NamedJob[] {
  const { title, author, language } = course.settings;
  const job = (chapter?: Chapter): NamedJob => {
    const known = chapter ?? course.chapters[0];
    const shown = known && emblematic(known);
    const card = cardJob({
      course: title,
      chapter: chapter?.title,
      author,
      placement: (shown?.position ?? initialPosition).fen,
      view: shown?.block.view ?? (course.settings.side === 'black' ? 'black' : 'white'),
      language,
    });
    return { path: decodeURIComponent(cardPath(chapter)), job: card };
  };
  return [job(), ...course.chapters.map((chapter) => job(chapter))];
}
