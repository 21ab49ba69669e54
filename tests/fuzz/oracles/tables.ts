/** What runs in the reader's browser: the tables that practice and the search look up. */
import {
  type PracticeCourse,
  pathTo,
  practiceCourse,
} from '../../../src/browser/practice/session/practice-course.ts';
import {
  begin,
  goOn,
  type Session,
  showMove,
  tryMove,
} from '../../../src/browser/practice/session/session.ts';
import { englishLetters } from '../../../src/chess/index.ts';
import type { CourseNotes } from '../../../src/contract/course-notes.ts';
import type { CourseTable } from '../../../src/contract/course-table.ts';
import { searchPositions } from '../../../src/lookup/search/search-positions.ts';
import { renderSite } from '../../../src/site/render/site.ts';
import type { Oracle } from '../case.ts';
import type { CourseRun } from './course-run.ts';
import { readHtml } from './html.ts';
import { place } from './site.ts';

/** Positions are found by what a reader types, and practice asks for each advice and comes to an end. */
export const usefulTables: Oracle<CourseRun> = {
  name: 'useful tables',
  *examine({ checked }) {
    if (checked === undefined) return;
    const { files } = renderSite(checked.course, place);
    const read = (beginning: string, name: string): unknown => {
      const script = files.find((group) => group.beginning === beginning)?.make()[0]?.content;
      if (script === undefined) return undefined;
      const scope: Record<string, unknown> = {};
      new Function('globalThis', script)(scope);
      return scope[name];
    };
    const table = read('course-table.', 'courseTable') as CourseTable;
    yield* tableFaults(table);
    const notes = read('course-notes.', 'courseNotes') as CourseNotes | undefined;
    if (notes === undefined) return;
    for (const { html } of Object.values(notes.notes)) yield* readHtml(html).faults;
    yield* practiceFaults(practiceCourse(table, notes));
  },
};

function* tableFaults(table: CourseTable): Generator<string> {
  const { positions, chapters } = table;
  if (new Set(positions.map(({ key }) => key)).size < positions.length)
    yield 'a position stands twice';
  for (const { key, at, moves } of positions) {
    if (moves.some(({ to }) => !positions[to])) yield `a move leads to no position from ${key}`;
    if (at.length === 0) yield `a position stands nowhere: ${key}`;
    if (at.some(([chapter]) => !chapters[chapter])) yield `a position of no chapter: ${key}`;
  }
  for (const { key } of positions.slice(0, 20)) {
    const found = searchPositions(table, `${key} 0 1`, englishLetters);
    if (found.kind !== 'position' || found.exact === undefined) {
      yield `not found: ${key} ${JSON.stringify(found)}`;
    }
  }
}

function* practiceFaults(course: PracticeCourse): Generator<string> {
  const chapters = new Set(course.table.chapters.keys());
  for (const { position, advice } of course.items.slice(0, 10)) {
    const way = pathTo(course, position, chapters);
    const end = way.steps.at(-1)?.move.to ?? way.start.position;
    if (end !== position) yield `the way to ${position} ends at ${end}`;
    let session = begin(course, [{ position }], chapters);
    for (let act = 0; session.stage.kind !== 'end'; act++) {
      if (act > 20) {
        yield `practice of ${position} does not end`;
        break;
      }
      session = actIn(session, advice[0] ?? '', act);
    }
  }
}

/** A reader who first asks to be shown, then knows. */
function actIn(session: Session, advice: string, act: number): Session {
  if (session.stage.kind === 'read') return goOn(session);
  return act === 0 ? showMove(session) : tryMove(session, advice, false);
}
