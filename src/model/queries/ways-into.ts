import { initialPosition } from '../../chess/index.ts';
import type { Course, GraphMove } from '../types.ts';

/** A move on a way, and the key of the position that it is played from. */
export interface WayStep {
  readonly from: string;
  readonly move: GraphMove;
}

export interface WaysInto {
  /** The shortest first; each begins where a block starts that names no start position. */
  readonly ways: readonly (readonly WayStep[])[];
  /** Whether there are more. */
  readonly more: boolean;
}

/** A limit, since move orders that meet again and again have millions of ways. */
const mostSteps = 20_000;

/** The ways by which the moves of a course lead to a position, across chapters; at most `limit`. */
export function waysInto(course: Course, key: string, limit: number): WaysInto {
  const into = stepsInto(course);
  const starts = startsOf(course);
  const ways: WayStep[][] = [];
  /** Ways from the position `at` to the target; shorter ones come first. */
  const open: { readonly at: string; readonly way: readonly WayStep[] }[] = [{ at: key, way: [] }];
  let taken = 0;
  for (const { at, way } of open) {
    if (starts.has(at) && way.length > 0) {
      if (ways.length === limit) return { ways, more: true };
      ways.push([...way].reverse());
    }
    if (at === initialPosition.key) continue;
    // Visits no position twice.
    const steps = (into.get(at) ?? []).filter(
      ({ from }) => from !== key && !way.some((step) => step.from === from),
    );
    for (const step of steps) open.push({ at: step.from, way: [...way, step] });
    taken += steps.length;
    if (taken > mostSteps) return { ways, more: true };
  }
  return { ways, more: false };
}

function stepsInto(course: Course): Map<string, WayStep[]> {
  const into = new Map<string, WayStep[]>();
  for (const { key, moves } of Object.values(course.graph)) {
    for (const move of moves) {
      const there = into.get(move.to) ?? [];
      into.set(move.to, there);
      there.push({ from: key, move });
    }
  }
  return into;
}

/** The keys of the positions where blocks of moves start without a name. */
function startsOf({ chapters }: Course): Set<string> {
  const blocks = chapters.flatMap((chapter) => chapter.blocks);
  return new Set(
    blocks.flatMap((block) =>
      block.kind === 'moves' && block.from === undefined
        ? (block.nodes[0]?.position?.key ?? [])
        : [],
    ),
  );
}
