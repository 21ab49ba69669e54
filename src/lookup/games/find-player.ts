import type { ComparedGame } from './types.ts';

/** What stands for a name where none is known (PGN standard, 8.1.1.4). */
const nobody = new Set(['', '?', '-']);

/** A player whose games these are. */
export interface FoundPlayer {
  readonly name: string;
  readonly games: number;
}

/** The names of the players, those with most games first. */
export function playersOf(games: readonly ComparedGame[]): FoundPlayer[] {
  const counts = new Map<string, number>();
  for (const { white, black } of games) {
    for (const name of new Set([white.trim(), black.trim()])) {
      if (!nobody.has(name)) counts.set(name, (counts.get(name) ?? 0) + 1);
    }
  }
  return [...counts]
    .map(([name, count]) => ({ name, games: count }))
    .sort((a, b) => b.games - a.games || a.name.localeCompare(b.name));
}

/**
 * The player whose games these most likely are: who stands in more than half of several games, and in more of them
 * than anybody else.
 */
export function findPlayer(games: readonly ComparedGame[]): FoundPlayer | undefined {
  const [first, second] = playersOf(games);
  if (first === undefined || first.games < 2 || first.games * 2 <= games.length) return undefined;
  return second?.games === first.games ? undefined : first;
}
