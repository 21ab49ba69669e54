import { type CourseFiles, decodeAddress, documentsOf } from '../../read/index.ts';

/**
 * The ids of the courses that a course may link to, found without parsing: every `pos:…/` in its texts, link or not.
 */
export function coursesNamedIn(files: CourseFiles): ReadonlySet<string> {
  const found = new Set<string>();
  for (const { text } of [...documentsOf(files), ...(files.news ?? [])]) {
    if (!/pos:/i.test(text)) continue;
    for (const [, id = ''] of text.matchAll(/pos:([^\s()<>[\]/]+?)(?:\/|%2f)/gi))
      found.add(decodeAddress(id));
  }
  return found;
}
