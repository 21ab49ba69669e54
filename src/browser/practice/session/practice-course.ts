import type { CourseNotes, LineStart } from '../../../contract/course-notes.ts';
import type { CourseTable, TableMove } from '../../../contract/course-table.ts';

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

export interface PracticeCourse {
  readonly table: CourseTable;
  readonly notes: CourseNotes;
  /** In the order of the course; every position once, however it is reached. */
  readonly items: readonly CourseItem[];
  /** By position. */
  readonly itemAt: ReadonlyMap<number, CourseItem>;
  /** Positions that lines keep away from. */
  readonly aside: ReadonlySet<number>;
  /** Where several courses are practised as one: the course that a position belongs to. */
  readonly homeOf?: (position: number) => CourseHome;
}

/** A course among several that are practised as one. */
export interface CourseHome {
  readonly shortTitle: string;
  readonly language: string;
  readonly side: CourseTable['side'];
  /** Address of its site, with a final `/`. */
  readonly at: string;
}

/** The side at the bottom of a board. */
export function viewOf({ table, homeOf }: PracticeCourse, position: number): 'white' | 'black' {
  return (homeOf?.(position) ?? table).side === 'black' ? 'black' : 'white';
}

export function practiceCourse(table: CourseTable, notes: CourseNotes): PracticeCourse {
  const unasked = new Set(notes.unasked);
  const items = table.positions.flatMap(({ key, moves }, position): CourseItem[] => {
    const advised = moves.filter(({ kind }) => kind === 'advice');
    if (advised.length === 0 || unasked.has(position)) return [];
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
  const itemAt = new Map(items.map((item) => [item.position, item]));
  return { table, notes, items, itemAt, aside: new Set(notes.aside) };
}

/** A move of the table and the position that it is played in. */
export interface MoveFrom {
  readonly from: number;
  readonly move: TableMove;
}

/** A path to one of the wanted positions. */
export interface Path {
  readonly start: LineStart | undefined;
  readonly steps: readonly MoveFrom[];
  readonly target: number;
}

/**
 * What a path may take, the best first: the course's advice and the replies to it; the same where it must pass through
 * what stands aside; then also what the course mentions, then also its warnings.
 */
const tiers = [
  { kinds: ['advice', 'reply'], aside: false },
  { kinds: ['advice', 'reply'], aside: true },
  { kinds: ['advice', 'reply', 'option'], aside: true },
  { kinds: ['advice', 'reply', 'option', 'bad'], aside: true },
] as const;
type Tier = (typeof tiers)[number];

/** The shortest path on from a position, through the course's advice and replies to it, to one of those wanted. */
export function pathOn(
  course: PracticeCourse,
  from: number,
  wanted: ReadonlySet<number>,
): Path | undefined {
  return search(course, tiers[0], [{ position: from, start: undefined }], wanted);
}

/**
 * The shortest path to a position from where lines of the given chapters begin, else from where any
 * does. A position that none leads to is its own beginning.
 */
export function pathTo(
  course: PracticeCourse,
  target: number,
  chapters: ReadonlySet<number>,
): Path & { readonly start: LineStart } {
  const home = course.homeOf?.(target);
  const all = course.notes.starts
    .filter(({ position }) => course.homeOf?.(position) === home)
    .map((start) => ({ position: start.position, start }));
  const near = all.filter(({ start }) => chapters.has(start.chapter));
  const wanted = new Set([target]);
  for (const tier of tiers) {
    for (const sources of [near, all]) {
      const found = search(course, tier, sources, wanted);
      if (found?.start !== undefined) return { ...found, start: found.start };
    }
  }
  const { at, number = 1 } = course.table.positions[target] ?? { at: [] };
  return { start: { chapter: at[0]?.[0] ?? 0, position: target, number }, steps: [], target };
}

interface Source {
  readonly position: number;
  readonly start: LineStart | undefined;
}

function search(
  { table, aside }: PracticeCourse,
  tier: Tier,
  sources: readonly Source[],
  wanted: ReadonlySet<number>,
): Path | undefined {
  const kinds = new Set<string>(tier.kinds);
  const isOpen = (position: number) => tier.aside || !aside.has(position) || wanted.has(position);
  const before = new Map<number, MoveFrom | Source>();
  for (const source of sources) {
    if (!before.has(source.position) && isOpen(source.position)) {
      before.set(source.position, source);
    }
  }
  // A map keeps the order in which positions were reached, and grows while it is walked.
  for (const position of before.keys()) {
    if (wanted.has(position)) return trace(before, position);
    for (const move of table.positions[position]?.moves ?? []) {
      if (kinds.has(move.kind) && !before.has(move.to) && isOpen(move.to)) {
        before.set(move.to, { from: position, move });
      }
    }
  }
  return undefined;
}

function trace(before: ReadonlyMap<number, MoveFrom | Source>, target: number): Path {
  const steps: MoveFrom[] = [];
  let here = before.get(target);
  while (here !== undefined && 'move' in here) {
    steps.unshift(here);
    here = before.get(here.from);
  }
  return { start: here?.start, steps, target };
}
