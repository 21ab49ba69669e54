import { type CourseSettings, readCourse } from '../../read/index.ts';
import { buildCourse } from '../build-course.ts';
import type { Course } from '../types.ts';

/** The model of a course given as texts: one chapter, or files by path. */
export function courseOf(
  files: string | Readonly<Record<string, string>>,
  side: CourseSettings['side'] = 'white',
): Course {
  const list = Object.entries(typeof files === 'string' ? { 'chapters/1.md': files } : files);
  const sources = list.map(([path, text]) => ({ path, text }));
  const inFolder = (folder: string) => sources.filter(({ path }) => path.startsWith(`${folder}/`));
  return buildCourse(
    readCourse(
      {
        settings: { path: 'course.yaml', text: `title: A course\nid: a-course\nside: ${side}\n` },
        chapters: inFolder('chapters'),
        games: inFolder('games'),
        media: inFolder('media').map(({ path }) => path),
        problems: [],
      },
      { frontMatter: 'optional' },
    ),
  );
}
