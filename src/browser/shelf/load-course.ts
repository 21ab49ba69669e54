import { dataOf } from '../../contract/attributes.ts';
import type { CourseNotes } from '../../contract/course-notes.ts';
import type { CourseTable } from '../../contract/course-table.ts';
import { parseJson } from '../../contract/parse-json.ts';
import type { ShelfCourse, ShelfTable } from '../../contract/shelf-table.ts';
import { loadScript } from '../load-script.ts';

/** The courses of the shelf that a page stands on, as the build has told it. */
export function givenCourses(place: HTMLElement): readonly ShelfCourse[] {
  const { shelf = '' } = dataOf('page', place);
  return (parseJson(shelf) as ShelfTable | undefined)?.courses ?? [];
}

const tables = new Map<string, Promise<CourseTable>>();
const notes = new Map<string, Promise<CourseNotes>>();

/** The table of a course, which leads from this page. @throws where it cannot be loaded. */
export function loadTable(course: ShelfCourse): Promise<CourseTable> {
  return once(tables, course.at, async () => {
    const table = await loaded(course, course.table, () => globalThis.courseTable);
    return { ...table, at: course.at };
  });
}

/** What practice needs of a course beside its table. @throws where it cannot be loaded, or there is none. */
export function loadNotes(course: ShelfCourse): Promise<CourseNotes> {
  return once(notes, course.at, () =>
    loaded(course, course.notes ?? '', () => globalThis.courseNotes),
  );
}

/** A course's scripts all set the same variable: it is read as soon as the script has run, before another does. */
async function loaded<Data>(
  { at }: ShelfCourse,
  file: string,
  given: () => Data | undefined,
): Promise<Data> {
  await loadScript(at + file);
  const data = given();
  if (data === undefined) throw new Error(at + file);
  return data;
}

/** What could not be loaded is tried again when it is next asked for. */
function once<Data>(
  known: Map<string, Promise<Data>>,
  name: string,
  load: () => Promise<Data>,
): Promise<Data> {
  const loading = known.get(name) ?? load();
  known.set(name, loading);
  loading.catch(() => known.delete(name));
  return loading;
}
