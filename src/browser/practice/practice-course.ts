import type { CourseNotes, LineStart } from '../../contract/course-notes.ts';
import type { CourseTable, TableMove } from '../../contract/course-table.ts';

/** A position where the course advises a move: what is learnt and asked. */
export interface CourseItem {
  /** Index in `CourseTable.positions`. */
  readonly position: number;
  readonly key: string;
  /** Canonical SAN; one move, unless the course allows itself more. */
  readonly advice: readonly string[];
  /** Indices of the chapters that advise it, in order. */
  readonly chapters: readonly number[];
}

/** A course as practice sees it. */
export interface PracticeCourse {
  readonly table: CourseTable;
  readonly notes: CourseNotes;
  /** In the order of the course; every position once, however it is reached. */
  readonly items: readonly CourseItem[];
  /** By position. */
  readonly itemAt: ReadonlyMap<number, CourseItem>;
}

export function practiceCourse(table: CourseTable, notes: CourseNotes): PracticeCourse {
  const items = table.positions.flatMap(({ key, moves }, position): CourseItem[] => {
    const advised = moves.filter(({ kind }) => kind === 'advice');
    if (advised.length === 0) return [];
    const chapters = advised.flatMap(({ at }) => at.map(([chapter]) => chapter));
    return [
      {
        position,
        key,
        advice: advised.map(({ san }) => san),
        chapters: [...new Set(chapters)].sort((a, b) => a - b),
      },
    ];
  });
  return { table, notes, items, itemAt: new Map(items.map((item) => [item.position, item])) };
}

/** A move of the table and the position that it is played in. */
export interface Step {
  readonly from: number;
  readonly move: TableMove;
}

/** A way to one of the wanted positions. */
export interface Way {
  readonly start: LineStart | undefined;
  readonly steps: readonly Step[];
  readonly target: number;
}

/** Moves that a way may take: the course's own, then also what it mentions, then also its warnings. */
const tiers = [
  ['advice', 'reply'],
  ['advice', 'reply', 'option'],
  ['advice', 'reply', 'option', 'bad'],
] as const;

/** The shortest way on from a position, through replies of the other side and the course's moves. */
export function wayOn(
  course: PracticeCourse,
  from: number,
  wanted: ReadonlySet<number>,
): Way | undefined {
  return search(course, [{ position: from, start: undefined }], wanted);
}

/**
 * The shortest way to a position from where lines of the given chapters begin, else from where any
 * does. A position that none leads to is its own beginning.
 */
export function wayTo(
  course: PracticeCourse,
  target: number,
  chapters: ReadonlySet<number>,
): Way & { readonly start: LineStart } {
  const all = course.notes.starts;
  const near = all.filter(({ chapter }) => chapters.has(chapter));
  for (const starts of [near, all]) {
    const sources = starts.map((start) => ({ position: start.position, start }));
    const found = search(course, sources, new Set([target]));
    if (found?.start !== undefined) return { ...found, start: found.start };
  }
  const chapter = course.table.positions[target]?.at[0]?.[0] ?? 0;
  return { start: { chapter, position: target, number: 1 }, steps: [], target };
}

interface Source {
  readonly position: number;
  readonly start: LineStart | undefined;
}

function search(
  { table }: PracticeCourse,
  sources: readonly Source[],
  wanted: ReadonlySet<number>,
): Way | undefined {
  for (const kinds of tiers) {
    const allowed = new Set<string>(kinds);
    const before = new Map<number, Step | Source>();
    for (const source of sources) {
      if (!before.has(source.position)) before.set(source.position, source);
    }
    // A map keeps the order in which positions were reached, and grows while it is walked.
    for (const position of before.keys()) {
      if (wanted.has(position)) return trace(before, position);
      for (const move of table.positions[position]?.moves ?? []) {
        if (allowed.has(move.kind) && !before.has(move.to)) {
          before.set(move.to, { from: position, move });
        }
      }
    }
  }
  return undefined;
}

function trace(before: ReadonlyMap<number, Step | Source>, target: number): Way {
  const steps: Step[] = [];
  let here = before.get(target);
  while (here !== undefined && 'move' in here) {
    steps.unshift(here);
    here = before.get(here.from);
  }
  return { start: here?.start, steps, target };
}
