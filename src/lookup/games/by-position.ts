import type { Color } from '../../chess/index.ts';
import type { CourseTable, TableMove } from '../../contract/course-table.ts';
import { type Leaving, partingOf } from './parting-of.ts';
import type { ComparedGame, GameExit } from './types.ts';

/** Games that a side won, drew and lost. Games without a result count in none. */
export interface Score {
  readonly won: number;
  readonly drawn: number;
  readonly lost: number;
}

/** A game that met the course. */
export type MetGame = ComparedGame & { readonly kind: 'met' };

/** A move that was played where games left the course. */
export interface PlayedInstead {
  readonly san: string;
  readonly games: number;
}

/** A position of the course in which games left it. */
export interface PositionRow {
  /** Index in the table of the course. */
  readonly position: number;
  readonly leaving: Leaving;
  /** Who left; absent where the course or the games ended. */
  readonly by?: Color;
  /** What the course has here. */
  readonly moves: readonly TableMove[];
  readonly games: readonly MetGame[];
  /** Of the first of the games. */
  readonly exit: GameExit;
  /** Most frequent first. */
  readonly played: readonly PlayedInstead[];
  /** Of the course's side; with a course for both, of White. */
  readonly score: Score;
}

/**
 * Where games part from a course, the position of most games first. A position has a row for each
 * way. With `exitOf` it is another place than their last known position, or none.
 */
export function byPosition(
  table: CourseTable,
  games: Iterable<ComparedGame>,
  exitOf: (game: MetGame) => GameExit | undefined = ({ exit }) => exit,
): PositionRow[] {
  const rows = new Map<string, PositionRow & { games: MetGame[] }>();
  for (const game of games) {
    const exit = game.kind === 'met' ? exitOf(game) : undefined;
    if (game.kind !== 'met' || exit === undefined) continue;
    const parting = partingOf(table, exit);
    const { position } = exit;
    const name = `${position} ${parting.leaving}`;
    const row = rows.get(name);
    if (row) row.games.push(game);
    else rows.set(name, { position, exit, ...parting, games: [game], played: [], score: noScore });
  }
  const side = table.side === 'both' ? 'white' : table.side;
  return [...rows.values()]
    .map((row) => ({
      ...row,
      played: playedIn(row.games.map(exitOf)),
      score: scoreOf(row.games, side),
    }))
    .sort((a, b) => b.games.length - a.games.length || a.position - b.position);
}

const noScore: Score = { won: 0, drawn: 0, lost: 0 };

function playedIn(exits: readonly (GameExit | undefined)[]): PlayedInstead[] {
  const counts = new Map<string, number>();
  for (const exit of exits) {
    const san = exit?.next?.san;
    if (san !== undefined) counts.set(san, (counts.get(san) ?? 0) + 1);
  }
  return [...counts]
    .map(([san, games]) => ({ san, games }))
    .sort((a, b) => b.games - a.games || (a.san < b.san ? -1 : 1));
}

function scoreOf(games: readonly ComparedGame[], side: Color): Score {
  const wins = side === 'white' ? '1-0' : '0-1';
  const count = (wanted: (result: string) => boolean) =>
    games.filter(({ result }) => wanted(result)).length;
  const drawn = count((result) => result === '1/2-1/2');
  const won = count((result) => result === wins);
  return { won, drawn, lost: count((result) => result !== '*') - drawn - won };
}
