import { realpath } from 'node:fs/promises';
import path from 'node:path';
import { type CourseEntry, shelfAround } from '../../check/index.ts';
import { type CourseFiles, isShelf, type ShelfAround } from '../../read/index.ts';
import { entryOf } from './entry-of.ts';
import { coursesNamedIn } from './links-in.ts';
import { type OpenShelf, openShelf, type ShelvedCourse } from './open-shelf.ts';

/** Tells a course of its shelf, as far as its links ask for it. */
export type LookAround = (folder: string, files: CourseFiles) => Promise<CourseFiles['shelf']>;

/** The shelf above a course that is opened by itself: what the others are is read when it links to them. */
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

/** The same for a shelf whose courses are published together. @param known what was seen of them already, by folder. */
export function lookWithin(
  shelf: OpenShelf,
  known: ReadonlyMap<string, CourseEntry>,
  site?: string,
): LookAround {
  return async (folder, files) => {
    const named = coursesNamedIn(files);
    const course = shelf.courses.find((each) => shelf.folderOf(each) === folder);
    if (named.size === 0 || course === undefined) return undefined;
    // Which of two courses of one id is meant, nobody knows; the id has a finding, and the links need none.
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
  /** Address of the shelf, where it is not what shelf.yaml says. */
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
    // Of the others their ids are enough, for a hint.
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
      // One that cannot be read, or is a course too, names nothing.
      const shelf = await openShelf(at).catch(() => undefined);
      const course = shelf?.courses.find((each) => path.join(at, each.path) === own);
      if (shelf && course) return { shelf, course };
    }
    if (path.dirname(at) === at) return undefined;
  }
}
