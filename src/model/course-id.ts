import { slug } from './slug.ts';
import type { Course } from './types.ts';

/** The name of a course through all its editions: as set, else made from its title. */
export function courseId({ settings: { id, title } }: Course): string {
  return id ?? slug(title);
}
