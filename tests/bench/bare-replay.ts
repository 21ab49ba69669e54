/** Replays the lines of a JSON file with the bare rules library: each move of the course once. */
import { readFileSync } from 'node:fs';
import { Chess } from 'chess.js';

const file = process.argv[2];
if (file === undefined) throw new Error('bare-replay needs a file');
const lines = JSON.parse(readFileSync(file, 'utf8')) as { start: string[]; moves: string[] }[];
for (const { start, moves } of lines) {
  const chess = new Chess();
  // The beginning of a variation is known: it is set up, not counted as a replay.
  if (start.length > 0) chess.loadPgn(start.join(' '));
  for (const move of moves) chess.move(move);
}
