import type { CourseTable } from '../../contract/course-table.ts';
import type { ComparedGame } from './types.ts';

/** The games in which a player, named in any case or in part, had the side of the course. */
export function withPlayer(
  table: CourseTable,
  games: readonly ComparedGame[],
  name: string,
): { readonly games: readonly ComparedGame[]; readonly otherSide: number } {
  const wanted = name.trim().toLowerCase();
  if (wanted === '') return { games, otherSide: 0 };
  const plays = (player: string) => player.toLowerCase().includes(wanted);
  const all = games.filter(({ white, black }) => plays(white) || plays(black));
  const { side } = table;
  if (side === 'both') return { games: all, otherSide: 0 };
  const own = all.filter((game) => plays(game[side]));
  return { games: own, otherSide: all.length - own.length };
}
