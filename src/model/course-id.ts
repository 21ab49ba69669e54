import { slug } from './slug.ts';
import type { Course } from './types.ts';

/** Identifies a course in all its editions: the `id` of its settings, else made from its title. */
export function courseId({ settings: { id, title } }: Pick<Course, 'settings'>): string {
  return id ?? shortened(slug(title));
}

/** Cuts an id to 200 bytes of UTF-8, so that it can name files. */
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
