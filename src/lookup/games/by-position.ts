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

/** A position of the course in which games left it; of each game it keeps a `Kept`. */
export interface PositionRow<Kept = MetGame> {
  /** Index in the table of the course. */
  readonly position: number;
  readonly leaving: Leaving;
  /** Who left; absent where the course or the games ended. */
  readonly by?: Color;
  /** What the course has here. */
  readonly moves: readonly TableMove[];
  readonly games: readonly Kept[];
  /** Of the first of the games. */
  readonly exit: GameExit;
  /** Most frequent first. */
  readonly played: readonly PlayedInstead[];
  /** Of the course's side; with a course for both, of White. */
  readonly score: Score;
}

export interface PositionCount<Kept> {
  readonly add: (game: ComparedGame) => void;
  /** The position of most games first. */
  readonly rows: () => PositionRow<Kept>[];
}

export interface CountOptions<Kept> {
  /** What is kept of each game: where there are very many, its number. */
  readonly keep: (game: MetGame) => Kept;
  /** Another place than the last known position of a game, or none. */
  readonly exitOf?: (game: MetGame) => GameExit | undefined;
}

/** Where games part from a course, the position of most games first. See `countPositions`. */
export function byPosition(
  table: CourseTable,
  games: Iterable<ComparedGame>,
  exitOf?: (game: MetGame) => GameExit | undefined,
): PositionRow[] {
  const count = countPositions(table, { keep: (game) => game, ...(exitOf && { exitOf }) });
  for (const game of games) count.add(game);
  return count.rows();
}

/** A row while games are still added. */
interface OpenRow<Kept> extends Omit<PositionRow<Kept>, 'played' | 'score'> {
  readonly games: Kept[];
  readonly played: Map<string, number>;
  readonly results: Map<string, number>;
}

/**
 * Counts where games part from a course, as they come. A position has a row for each way in which
 * they do.
 */
export function countPositions<Kept>(
  table: CourseTable,
  { keep, exitOf = ({ exit }) => exit }: CountOptions<Kept>,
): PositionCount<Kept> {
  const rows = new Map<string, OpenRow<Kept>>();
  const rowOf = (exit: GameExit): OpenRow<Kept> => {
    const parting = partingOf(table, exit);
    const { position } = exit;
    const name = `${position} ${parting.leaving}`;
    const known = rows.get(name);
    if (known) return known;
    const row = { position, exit, ...parting, games: [], played: new Map(), results: new Map() };
    rows.set(name, row);
    return row;
  };
  const add = (game: ComparedGame) => {
    const exit = game.kind === 'met' ? exitOf(game) : undefined;
    if (game.kind !== 'met' || exit === undefined) return;
    const row = rowOf(exit);
    row.games.push(keep(game));
    if (exit.next !== undefined) raise(row.played, exit.next.san);
    raise(row.results, game.result);
  };
  const side = table.side === 'both' ? 'white' : table.side;
  const closed = ({ played, results, ...row }: OpenRow<Kept>): PositionRow<Kept> => ({
    ...row,
    played: mostFirst(played),
    score: scoreOf(results, side),
  });
  return {
    add,
    rows: () =>
      [...rows.values()]
        .map(closed)
        .sort((a, b) => b.games.length - a.games.length || a.position - b.position),
  };
}

function raise(counts: Map<string, number>, name: string): void {
  counts.set(name, (counts.get(name) ?? 0) + 1);
}

function mostFirst(played: ReadonlyMap<string, number>): PlayedInstead[] {
  return [...played]
    .map(([san, games]) => ({ san, games }))
    .sort((a, b) => b.games - a.games || (a.san < b.san ? -1 : 1));
}

function scoreOf(results: ReadonlyMap<string, number>, side: Color): Score {
  const count = (result: ComparedGame['result']) => results.get(result) ?? 0;
  const [won, lost] = side === 'white' ? (['1-0', '0-1'] as const) : (['0-1', '1-0'] as const);
  return { won: count(won), drawn: count('1/2-1/2'), lost: count(lost) };
}
