import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { drawBoard } from '../../draw/index.ts';
import { makePngs, type PngJob } from '../../draw/pngs.ts';
import type { Course } from '../../model/types.ts';
import { diagramNames, imagePath, pictureOf } from '../render/diagram-images.ts';

/** Width of a diagram's picture, in CSS pixels. */
const diagramWidth = 560;

interface NamedJob {
  readonly path: string;
  readonly job: PngJob;
}

/** Writes the pictures of all diagrams, once and in double size, and returns their paths. */
export async function writeImages(
  course: Course,
  out: string,
  options: {
    readonly cacheDir?: string | undefined;
    readonly onDone?: ((done: number, all: number) => void) | undefined;
  },
): Promise<string[]> {
  const jobs = diagramJobs(course);
  const writes: Promise<void>[] = [];
  await mkdir(join(out, 'images'), { recursive: true });
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
