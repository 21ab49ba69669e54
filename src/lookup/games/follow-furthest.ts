import type { CourseTable } from '../../contract/course-table.ts';
import type { MetGame } from './by-position.ts';
import type { ComparedGame } from './types.ts';
import { sideOfPlayer } from './with-player.ts';

/** Games compared with a course: the same games, in the same order, for each of several courses. */
export interface ComparedWith {
  readonly table: CourseTable;
  readonly games: readonly ComparedGame[];
}

export interface FollowedGame {
  /** As the first course has it. */
  readonly game: ComparedGame;
  /** Indices of the courses; none where no course has its first move, or none is for the player's side. */
  readonly courses: readonly number[];
}

/**
 * For each game the courses that know most of its moves; of several that know as many, all.
 * @param name of a player, or a part of it: then only that player's games are told, each with courses for the side that
 *   the player had.
 */
export function followFurthest(compared: readonly ComparedWith[], name: string): FollowedGame[] {
  const sides = compared.map(({ table }) => sideOfPlayer(table, name));
  const [first] = compared;
  return (first?.games ?? []).flatMap((game, index): FollowedGame[] => {
    const own = sides.map((sideOf) => sideOf(game));
    if (own.every((side) => side === undefined)) return [];
    const known = compared.map(({ games }, course) => {
      const met = games[index];
      return met?.kind === 'met' && own[course] === 'course' ? pliesOf(met) : 0;
    });
    const most = Math.max(...known);
    const courses = known.flatMap((plies, course) => (most > 0 && plies === most ? [course] : []));
    return [{ game, courses }];
  });
}

/** Up to which move a course knows a game, counted in half-moves; 0 where it has only its start. */
function pliesOf({ exit: { last } }: MetGame): number {
  return last === undefined ? 0 : last.number * 2 + (last.color === 'black' ? 1 : 0);
}
