import { nearestName } from '../../diagnostics/index.ts';
import type { Chapter, Course } from '../../model/index.ts';
import { PublishError } from '../publish-error.ts';

/**
 * A chapter by its id or its number.
 * @throws PublishError where the course has no such chapter.
 */
export function chapterOf(course: Course, name: string): Chapter {
  const found = course.chapters.find(({ id }) => id === name) ?? course.chapters[Number(name) - 1];
  if (found !== undefined) return found;
  const near = nearestName(
    name,
    course.chapters.map(({ id }) => id),
  );
  const ids = course.chapters.map(({ id }) => `\`${id}\``).join(', ');
  throw new PublishError(
    `the course has no chapter \`${name}\``,
    near === undefined ? `its chapters are ${ids}` : `did you mean \`${near}\`?`,
  );
}
