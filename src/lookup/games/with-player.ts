import type { CourseTable } from '../../contract/course-table.ts';
import type { ComparedGame } from './types.ts';

/** Which side a player had: that of the `course`, the `other` one, or none. */
export type PlayerSide = 'course' | 'other' | undefined;

/**
 * Tells for a game which side a player had, who is named in any case or in part. With no name every
 * game counts as one of the course's side, and so does each of the player's with a course for both.
 */
export function sideOfPlayer(table: CourseTable, name: string): (game: ComparedGame) => PlayerSide {
  const wanted = name.trim().toLowerCase();
  if (wanted === '') return () => 'course';
  const plays = (player: string) => player.toLowerCase().includes(wanted);
  const { side } = table;
  return (game) => {
    if (!(plays(game.white) || plays(game.black))) return undefined;
    return side === 'both' || plays(game[side]) ? 'course' : 'other';
  };
}

/** The games in which a player had the side of the course, and how many there are with the other. */
export function withPlayer(
  table: CourseTable,
  games: readonly ComparedGame[],
  name: string,
): { readonly games: readonly ComparedGame[]; readonly otherSide: number } {
  const sideOf = sideOfPlayer(table, name);
  return {
    games: games.filter((game) => sideOf(game) === 'course'),
    otherSide: games.filter((game) => sideOf(game) === 'other').length,
  };
}
