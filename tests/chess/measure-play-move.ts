/**
 * Measures playMove: `node tests/chess/measure-play-move.ts`. Prints microseconds a move over the
 * opening lines of Debian's package pgn-extract: played for the first time, played again (as in
 * the next check of a preview), and, to compare, bare chess.js over the same lines.
 */
import { readFileSync } from 'node:fs';
import { Chess } from 'chess.js';
import { parsePgn } from 'chessops/pgn';
import { initialPosition, isMoveFault, playMove } from '../../src/chess/index.ts';

const text = readFileSync('/usr/share/pgn-extract/eco.pgn', 'utf8');
const lines = parsePgn(text).map((game) => [...game.moves.mainline()].map(({ san }) => san));
const moves = lines.reduce((sum, line) => sum + line.length, 0);

function measure(name: string, playLine: (line: readonly string[]) => void) {
  const start = performance.now();
  for (const line of lines) playLine(line);
  const each = ((performance.now() - start) * 1000) / moves;
  process.stdout.write(`${name.padEnd(24)} ${each.toFixed(1)} µs a move, ${moves} moves\n`);
}

function play(line: readonly string[]) {
  let position = initialPosition;
  for (const san of line) {
    const played = playMove(position, san);
    if (isMoveFault(played)) throw new Error(played.reason);
    position = played.after;
  }
}

measure('playMove, first time', play);
measure('playMove, again', play);
measure('chess.js move, strict', (line) => {
  const chess = new Chess();
  for (const san of line) chess.move(san, { strict: true });
});
