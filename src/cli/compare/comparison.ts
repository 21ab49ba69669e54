import type { CourseTable } from '../../contract/index.ts';
import type { ComparedGame } from '../../lookup/games/index.ts';
import { blockAt, type Course } from '../../model/index.ts';

/** The course that games are compared with, and the player. */
export interface ComparedCourse {
  readonly course: Course;
  readonly table: CourseTable;
  /** The name that was asked for; empty for any. */
  readonly player: string;
}

/** A report that is fed game by game and keeps none. */
export interface ComparisonReport {
  /** Takes a game; returns what can be printed now. */
  readonly add: (game: ComparedGame) => string;
  /** Returns the rest. @param otherSide games in which the player had the other side. */
  readonly end: (otherSide: number) => string;
}

export type GameSums = Readonly<Record<'games' | ComparedGame['kind'], number>>;

export function countGames(): { add: (game: ComparedGame) => void; sums: GameSums } {
  const sums = { games: 0, met: 0, apart: 0, empty: 0, broken: 0, variant: 0 };
  const add = ({ kind }: ComparedGame) => {
    sums.games += 1;
    sums[kind] += 1;
  };
  return { add, sums };
}

/** Where the course first shows a position, as `file:line`. */
export function whereOf(course: Course, key: string): string | undefined {
  const [ref] = course.graph[key]?.at ?? [];
  const block = ref && blockAt(course, ref);
  const place = (ref && block?.nodes[ref.node]?.written?.place) ?? block?.place;
  return place && `${place.file}:${place.start.line}`;
}

/** Whether the course says of a position that a line ends there on purpose. */
export function endsOnPurpose(course: Course, key: string): boolean {
  const refs = course.graph[key]?.at ?? [];
  return refs.some((ref) =>
    blockAt(course, ref)?.nodes[ref.node]?.statements.some(({ name }) => name === 'end'),
  );
}
