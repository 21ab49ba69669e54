import type { Color } from '../../chess/index.ts';
import type { CourseTable, TableMove } from '../../contract/course-table.ts';
import type { GameExit } from './types.ts';

/**
 * How a game and a course part, in the terms of the games that a course shows:
 * - `advised`: the course advises a move, and another was played;
 * - `covered`: the other side played what the course does not answer;
 * - `known`: the course knows moves here, and none of them was played;
 * - `ended`: the course ends here, and the game went on;
 * - `within`: the game ended here.
 */
export type Leaving = 'advised' | 'covered' | 'known' | 'ended' | 'within';

export interface Parting {
  readonly leaving: Leaving;
  /** Who left; absent where the course or the game ended. */
  readonly by?: Color;
  /** What the course has here: its advice, else all moves. */
  readonly moves: readonly TableMove[];
}

/** How a game parts from the course at its last known position. */
export function partingOf(table: CourseTable, { position, next }: GameExit): Parting {
  const here = table.positions[position];
  const all = here?.moves ?? [];
  if (here === undefined || next === undefined) return { leaving: 'within', moves: all };
  if (all.length === 0) return { leaving: 'ended', moves: all };
  const advice = all.filter(({ kind }) => kind === 'advice');
  const by = next.color;
  if (advice.length > 0) return { leaving: 'advised', by, moves: advice };
  const sound = all.filter(({ kind }) => kind !== 'bad');
  const isReply = all.some(({ kind }) => kind === 'reply');
  return { leaving: isReply ? 'covered' : 'known', by, moves: sound.length > 0 ? sound : all };
}
