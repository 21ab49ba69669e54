import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { type Cost, measure, root } from './measure.ts';

export const demo = path.join(root, 'demo-course');

/** A file of so many games, two of the demo course over and over. */
export function gamesFile(count: number, work: string): string {
  const file = path.join(work, `games-${count}.pgn`);
  const pair = readFileSync(path.join(demo, 'games/lantern-street.pgn'), 'utf8');
  writeFileSync(file, `${pair}\n`.repeat(count / 2));
  return file;
}

/**
 * What this machine is worth in this minute: chess.js replays 400 games. A goal in seconds is told beside it, so that
 * figures of another hour, or another machine, can be compared.
 */
export function yardstick(work: string): Cost {
  return measure([path.join(root, 'tests/bench/alone/bare-games.ts'), gamesFile(400, work)], {
    work,
  });
}

export const yardstickUnit = '× chess.js replaying 400 games';
