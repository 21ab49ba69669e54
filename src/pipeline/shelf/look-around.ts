import { realpath } from 'node:fs/promises';
import path from 'node:path';
import { type CourseEntry, shelfAround } from '../../check/index.ts';
import { type CourseFiles, isShelf, type ShelfAround } from '../../read/index.ts';
import { entryOf } from './entry-of.ts';
import { coursesNamedIn } from './links-in.ts';
import { type OpenShelf, openShelf, type ShelvedCourse } from './open-shelf.ts';

/** Finds what a course may know of its shelf: no more than its links ask for. */
export type LookAround = (folder: string, files: CourseFiles) => Promise<CourseFiles['shelf']>;

/** For a course opened by itself: the shelf above it, whose courses are read if it links to them. */
export const lookAbove: LookAround = async (folder, files) => {
  const named = coursesNamedIn(files);
  if (named.size === 0) return undefined;
  const found = await shelfAbove(folder);
  if (found === undefined) return 'none';
  const { shelf, course } = found;
  return aroundOf(shelf, course, named, {
    together: false,
    entryOf: (other) => entryOf(shelf.folderOf(other)),
  });
};

/** The same for a shelf whose courses are published together. @param known entries of courses already opened, by folder. */
export function lookWithin(
  shelf: OpenShelf,
  known: ReadonlyMap<string, CourseEntry>,
  site?: string,
): LookAround {
  return async (folder, files) => {
    const named = coursesNamedIn(files);
    const course = shelf.courses.find((each) => shelf.folderOf(each) === folder);
    if (named.size === 0 || course === undefined) return undefined;
    // Two courses of one id have a finding already; their links need none.
    const isClear = (id: string) => shelf.courses.filter((each) => each.id === id).length < 2;
    if (![...named].every(isClear)) return undefined;
    return aroundOf(shelf, course, named, {
      together: true,
      site,
      entryOf: (other) => known.get(other.path) ?? entryOf(shelf.folderOf(other)),
    });
  };
}

interface Around extends Pick<ShelfAround, 'together'> {
  /** Address of the shelf; default: `site` in shelf.yaml. */
  readonly site?: string | undefined;
  readonly entryOf: (course: ShelvedCourse) => CourseEntry | Promise<CourseEntry>;
}

async function aroundOf(
  { courses, files: { settings } }: OpenShelf,
  own: ShelvedCourse,
  named: ReadonlySet<string>,
  { together, site = settings.site, entryOf }: Around,
): Promise<ShelfAround> {
  const entries: Pick<CourseEntry, 'id' | 'title' | 'names'>[] = [];
  for (const course of courses) {
    const isAsked = course !== own && named.has(course.id);
    // The ids of the others are enough for a hint.
    entries.push(isAsked ? await entryOf(course) : { id: course.id, title: course.id, names: {} });
  }
  return shelfAround(own.id, entries, { together, ...(site !== undefined && { site }) });
}

/** The nearest shelf in a folder above that names the course in this one. */
async function shelfAbove(
  folder: string,
): Promise<{ shelf: OpenShelf; course: ShelvedCourse } | undefined> {
  const own = await realpath(folder);
  for (let at = path.dirname(own); ; at = path.dirname(at)) {
    if (await isShelf(at)) {
      // An unreadable shelf, or one that is a course too, names no courses.
      const shelf = await openShelf(at).catch(() => undefined);
      const course = shelf?.courses.find((each) => path.join(at, each.path) === own);
      if (shelf && course) return { shelf, course };
    }
    if (path.dirname(at) === at) return undefined;
  }
}
