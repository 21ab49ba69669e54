/**
 * The opening lines of `eco.pgn`, which Debian's package pgn-extract installs: 2,014 lines that
 * people really play. The file is not part of this project; where the package is not installed
 * (`apt-get install pgn-extract`) this test is skipped.
 */
import { existsSync, readFileSync } from 'node:fs';
import { Chess } from 'chessops/chess';
import { parsePgn } from 'chessops/pgn';
import { parseSan } from 'chessops/san';
import { expect, test } from 'vitest';
import { initialPosition } from '../../src/chess/index.ts';
import { compare, compareBoard, movesOf, playBoth } from './against-chessops.ts';

const file = '/usr/share/pgn-extract/eco.pgn';

test.skipIf(!existsSync(file))('opening lines agree with chessops', () => {
  const seen = new Set<string>();
  let moves = 0;
  for (const game of parsePgn(readFileSync(file, 'utf8'))) {
    const chess = Chess.default();
    let position = initialPosition;
    for (const { san } of game.moves.mainline()) {
      const move = parseSan(chess, san);
      if (move === undefined) throw new Error(`${san} in ${position.fen}`);
      position = playBoth(position, chess, san, move);
      moves++;
      if (seen.has(position.fen)) continue;
      seen.add(position.fen);
      compare(position, chess, movesOf(chess));
      if (seen.size % 50 === 0) compareBoard(position, chess);
    }
  }
  expect(moves).toBeGreaterThan(20_000);
});
