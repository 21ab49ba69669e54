import { initialPosition } from '../../chess/index.ts';
import type { Course, GraphMove } from '../types.ts';

/** A move on a path, and the key of the position that it is played from. */
export interface PathStep {
  readonly from: string;
  readonly move: GraphMove;
}

export interface PathsInto {
  /** The shortest first; each begins where a block starts that names no start position. */
  readonly paths: readonly (readonly PathStep[])[];
  /** Whether there are more. */
  readonly more: boolean;
}

/** A limit, since move orders that meet again and again have millions of paths. */
const mostSteps = 20_000;

/** The paths by which the moves of a course lead to a position, across chapters; at most `limit`. */
export function pathsInto(course: Course, key: string, limit: number): PathsInto {
  const into = stepsInto(course);
  const starts = startsOf(course);
  const paths: PathStep[][] = [];
  /** Paths from the position `at` to the target; shorter ones come first. */
  const open: { readonly at: string; readonly path: readonly PathStep[] }[] = [
    { at: key, path: [] },
  ];
  let taken = 0;
  for (const { at, path } of open) {
    if (starts.has(at) && path.length > 0) {
      if (paths.length === limit) return { paths, more: true };
      paths.push([...path].reverse());
    }
    if (at === initialPosition.key) continue;
    // Visits no position twice.
    const steps = (into.get(at) ?? []).filter(
      ({ from }) => from !== key && !path.some((step) => step.from === from),
    );
    for (const step of steps) open.push({ at: step.from, path: [...path, step] });
    taken += steps.length;
    if (taken > mostSteps) return { paths, more: true };
  }
  return { paths, more: false };
}

function stepsInto(course: Course): Map<string, PathStep[]> {
  const into = new Map<string, PathStep[]>();
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
