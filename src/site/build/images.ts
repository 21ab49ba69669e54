import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { initialPosition } from '../../chess/index.ts';
import { cardSize, drawBoard, drawCard } from '../../draw/index.ts';
import { makePngs, type PngJob } from '../../draw/pngs.ts';
import type { Chapter, Course } from '../../model/types.ts';
import { cardPath, diagramNames, imagePath, pictureOf } from '../render/diagram-images.ts';
import { emblematic } from '../render/site.ts';

/** Width of a diagram's picture, in CSS pixels. */
const diagramWidth = 560;

interface NamedJob {
  readonly path: string;
  readonly job: PngJob;
}

/**
 * Writes the pictures of all diagrams, once and in double size, and the cards that other sites show
 * beside a link to the course or a chapter. Returns their paths.
 */
export async function writeImages(
  course: Course,
  out: string,
  options: {
    readonly cacheDir?: string | undefined;
    readonly onDone?: ((done: number, all: number) => void) | undefined;
  },
): Promise<string[]> {
  const jobs = [...diagramJobs(course), ...(await cardJobs(course))];
  const writes: Promise<void>[] = [];
  await mkdir(join(out, 'images', 'cards'), { recursive: true });
  await makePngs(
    jobs.map(({ job }) => job),
    (index, png) => {
      const path = jobs[index]?.path;
      if (path !== undefined) writes.push(writeFile(join(out, path), png));
      options.onDone?.(writes.length, jobs.length);
    },
    { cache: options.cacheDir },
  );
  await Promise.all(writes);
  return jobs.map(({ path }) => path);
}

function diagramJobs(course: Course): NamedJob[] {
  return course.chapters.flatMap((chapter) =>
    [...diagramNames(chapter)].flatMap(([index, name]) => {
      const block = chapter.blocks[index];
      const picture = block?.kind === 'diagram' ? pictureOf(block) : undefined;
      if (picture === undefined) return [];
      const svg = drawBoard(picture);
      return ([1, 2] as const).map((scale) => ({
        path: decodeURIComponent(imagePath(name, scale)),
        job: { svg, width: diagramWidth, scale },
      }));
    }),
  );
}

async function cardJobs(course: Course): Promise<NamedJob[]> {
  const { title, author, language } = course.settings;
  const job = async (chapter?: Chapter): Promise<NamedJob> => {
    const known = chapter ?? course.chapters[0];
    const shown = known && emblematic(known);
    const svg = await drawCard({
      course: title,
      chapter: chapter?.title,
      author,
      placement: (shown?.position ?? initialPosition).fen,
      view: shown?.block.view ?? (course.settings.side === 'black' ? 'black' : 'white'),
      language,
    });
    return { path: decodeURIComponent(cardPath(chapter)), job: { svg, ...cardSize } };
  };
  const jobs = [await job()];
  for (const chapter of course.chapters) jobs.push(await job(chapter));
  return jobs;
}
