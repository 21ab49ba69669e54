import { slug } from './slug.ts';
import type { Course } from './types.ts';

/** The name of a course through all its editions: as set, else made from its title. */
export function courseId({ settings: { id, title } }: Pick<Course, 'settings'>): string {
  return id ?? shortened(slug(title));
}

/** As much of an id as files can be named by: 200 bytes of UTF-8. */
function shortened(id: string): string {
  let bytes = 0;
  let short = '';
  for (const letter of id) {
    bytes += new TextEncoder().encode(letter).length;
    if (bytes > 200) return short.replace(/-+$/, '');
    short += letter;
  }
  return id;
}
