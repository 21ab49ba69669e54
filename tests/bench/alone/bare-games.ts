/** Replays the games of a PGN file with the bare rules library: each move of each game. */
import { readFileSync } from 'node:fs';
import { Chess } from 'chess.js';

const file = process.argv[2];
if (file === undefined) throw new Error('bare-games needs a file');
for (const game of readFileSync(file, 'utf8').split(/\n\n(?=\[Event )/)) {
  new Chess().loadPgn(game);
}
