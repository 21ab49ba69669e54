import type { Session } from '../session/session.ts';

/** How one move of a session stands: `due` comes back in it, `rest` has not been met. */
export type Mark = 'here' | 'right' | 'wrong' | 'due' | 'rest';

/** A mark for each move of a session: in the order in which they were met, then what is left. */
export function marksOf({ met, tasks, stage, outcomes }: Session): readonly Mark[] {
  const left = new Set(tasks.map(({ position }) => position));
  const missed = new Set(
    outcomes.flatMap(({ position, how }) => (how === 'wrong' || how === 'shown' ? position : [])),
  );
  const now = 'task' in stage ? stage.task.position : undefined;
  const known = met.map((position): Mark => {
    if (position === now) return 'here';
    if (missed.has(position)) return 'wrong';
    return left.has(position) ? 'due' : 'right';
  });
  const unmet = tasks.filter(({ position }) => !met.includes(position));
  return [...known, ...unmet.map((): Mark => 'rest')];
}

/** Where a session stands. */
export interface Count {
  /** The move that is shown or asked now, or was found last, from 1. */
  readonly n: number;
  readonly all: number;
  /** It was met before in this session. */
  readonly again: boolean;
  /** How many others come back before the end. */
  readonly comeBack: number;
}

export function countOf(session: Session): Count {
  const { met, tasks, stage } = session;
  const task = 'task' in stage ? stage.task : undefined;
  const others = tasks.filter(
    ({ position }) => position !== task?.position && met.includes(position),
  );
  const last = session.line.findLast(({ found }) => found)?.from;
  const here = task?.position ?? last ?? -1;
  return {
    n: met.indexOf(here) + 1,
    all: marksOf(session).length,
    again: task !== undefined && (task.graded === true || task.notBefore !== undefined),
    comeBack: others.length,
  };
}
