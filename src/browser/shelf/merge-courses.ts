import type { CourseNotes } from '../../contract/course-notes.ts';
import type { CourseTable, TablePlace, TablePosition } from '../../contract/course-table.ts';
import type { ShelfCourse } from '../../contract/shelf-table.ts';
import {
  type CourseItem,
  type PracticeCourse,
  practiceCourse,
} from '../practice/session/practice-course.ts';

/** A course of the shelf that is practised with others, and where its positions begin among theirs. */
export interface MergedPart {
  readonly shelved: ShelfCourse;
  /** The course alone, as its own page of practice has it. */
  readonly course: PracticeCourse;
  /** What is added to an index of its own table, and of its chapters. */
  readonly first: number;
  readonly firstChapter: number;
}

/** Several courses as one, so that one session asks of all. */
export interface MergedCourse {
  readonly course: PracticeCourse;
  readonly parts: readonly MergedPart[];
  /** The part that a position is of, and its index there. */
  readonly courseAt: (position: number) => { readonly part: MergedPart; readonly position: number };
}

/**
 * Puts the tables of courses behind one another. No move leads from one course to another: a position that stands in
 * two of them is there twice, since each may advise another move in it and keeps its own progress.
 */
export function mergeCourses(
  given: readonly {
    readonly shelved: ShelfCourse;
    readonly table: CourseTable;
    readonly notes: CourseNotes;
  }[],
): MergedCourse {
  const parts: MergedPart[] = [];
  const tables: CourseTable[] = [];
  const notes: CourseNotes[] = [];
  let [first, chapter] = [0, 0];
  for (const { shelved, ...each } of given) {
    const course = practiceCourse(each.table, each.notes);
    parts.push({ shelved, course, first, firstChapter: chapter });
    tables.push(moveTable(each.table, shelved.at, first, chapter));
    notes.push(moveNotes(each.notes, first, chapter));
    first += each.table.positions.length;
    chapter += each.table.chapters.length;
  }
  const partOf = (position: number) =>
    parts.findLast((part) => part.first <= position) ?? failFor(position);
  const items = parts.flatMap(({ course, first, firstChapter }) =>
    course.items.map(
      (item): CourseItem => ({
        ...item,
        position: item.position + first,
        chapters: item.chapters.map((each) => each + firstChapter),
      }),
    ),
  );
  return {
    parts,
    course: {
      table: {
        format: 1,
        course: '',
        edition: '',
        title: '',
        language: '',
        side: 'both',
        chapters: tables.flatMap(({ chapters }) => chapters),
        positions: tables.flatMap(({ positions }) => positions),
      },
      notes: {
        format: 1,
        starts: notes.flatMap(({ starts }) => starts),
        unasked: notes.flatMap(({ unasked }) => unasked),
        aside: notes.flatMap(({ aside }) => aside),
        notes: Object.assign({}, ...notes.map((each) => each.notes)),
      },
      items,
      itemAt: new Map(items.map((item) => [item.position, item])),
      aside: new Set(notes.flatMap(({ aside }) => aside)),
      homeOf: (position) => partOf(position).shelved,
    },
    courseAt(position) {
      const part = partOf(position);
      return { part, position: position - part.first };
    },
  };
}

function failFor(position: number): never {
  throw new RangeError(`no course has position ${position}`);
}

function moveTable(table: CourseTable, at: string, first: number, chapter: number): CourseTable {
  const movePlace = ([index, ...id]: TablePlace): TablePlace => [index + chapter, ...id];
  const movePosition = (position: TablePosition): TablePosition => ({
    ...position,
    at: position.at.map(movePlace),
    moves: position.moves.map((move) => ({
      ...move,
      to: move.to + first,
      at: move.at.map(movePlace),
    })),
  });
  return {
    ...table,
    chapters: table.chapters.map(({ title, page }) => ({ title, page: at + page })),
    positions: table.positions.map(movePosition),
  };
}

function moveNotes(
  { starts, unasked, aside, notes }: CourseNotes,
  first: number,
  chapter: number,
): CourseNotes {
  return {
    format: 1,
    starts: starts.map((start) => ({
      ...start,
      chapter: start.chapter + chapter,
      position: start.position + first,
    })),
    unasked: unasked.map((position) => position + first),
    aside: aside.map((position) => position + first),
    // As `noteName` makes them.
    notes: Object.fromEntries(
      Object.entries(notes).map(([name, note]) => [
        name.replace(/^\d+/, (index) => String(Number(index) + first)),
        note,
      ]),
    ),
  };
}
