import type { GivenName } from '../types.ts';

/** A name where it is first given, with the file of that chapter. */
export interface NameInCourse extends GivenName {
  readonly chapter: string;
}

/** The names of a course where each is first given, in the order of the course. */
export function firstNames(
  chapters: readonly { readonly file: string; readonly names: readonly GivenName[] }[],
): ReadonlyMap<string, NameInCourse> {
  const first = new Map<string, NameInCourse>();
  for (const { file, names } of chapters) {
    for (const name of names) {
      if (!first.has(name.name)) first.set(name.name, { ...name, chapter: file });
    }
  }
  return first;
}
