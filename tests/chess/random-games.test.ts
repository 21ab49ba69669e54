/**
 * Positions of random games, played by chessops and compared one by one. The games start from
 * the initial position and from the positions of the published perft tables, which are dense in
 * castling, en passant, pins and promotions; and from endings where stalemate and mate are near.
 */
import { Chess } from 'chessops/chess';
import { parseFen as parseFenOfChessops } from 'chessops/fen';
import { expect, test } from 'vitest';
import { initialPosition, isFenFault, parseFen } from '../../src/chess/index.ts';
import { runs } from '../setup/runs.ts';
import { compare, compareBoard, movesOf, playBoth } from './against-chessops.ts';
import { perftTables } from './perft-tables.ts';
import { randomFrom } from './random.ts';

/** A hundred thousand at night. */
const wanted = runs(10_000);
/** How often the games are to lead through each thing that is hard about the rules. */
const least = 11;
const seed = 19940312;
const starts = [
  initialPosition.fen,
  ...perftTables.slice(1).map(({ fen }) => fen),
  '8/5k2/8/8/8/3Q4/8/3K4 w - - 0 1',
  '7k/1R6/8/8/8/8/R4Q2/K7 w - - 0 1',
];

test(`${wanted} positions of random games (seed ${seed}) agree with chessops`, () => {
  const random = randomFrom(seed);
  const seen = new Set<string>();
  const met = { check: 0, mate: 0, stalemate: 0, castling: 0, enPassant: 0, promotion: 0 };
  let games = 0;
  // Mates are rare. So many positions without them would be a fault of their own.
  const lacks = () => Math.min(...Object.values(met)) < least && seen.size < 5 * wanted;
  while (seen.size < wanted || lacks()) {
    const fen = starts[games % starts.length] ?? '';
    games++;
    const chess = Chess.fromSetup(parseFenOfChessops(fen).unwrap()).unwrap();
    const start = parseFen(fen);
    if (isFenFault(start)) throw new Error(start.reason);
    let position = start;
    for (let ply = 0; ply < 200; ply++) {
      // FIDE Laws, 9.6.2: 75 moves of each side without a capture or a pawn's move end the game.
      if (chess.halfmoves >= 150 || chess.isInsufficientMaterial()) break;
      const moves = movesOf(chess);
      if (!seen.has(position.fen)) {
        compare(position, chess, moves);
        if (seen.size % 100 === 0) compareBoard(position, chess);
        seen.add(position.fen);
      }
      if (chess.isCheck()) met.check++;
      if (position.key.at(-1) !== '-') met.enPassant++;
      const choice = [...moves][Math.floor(random() * moves.size)];
      if (choice === undefined) {
        met[chess.isCheck() ? 'mate' : 'stalemate']++;
        break;
      }
      const [san, move] = choice;
      if (san.startsWith('O-O')) met.castling++;
      if (san.includes('=')) met.promotion++;
      position = playBoth(position, chess, san, move);
    }
  }
  for (const [what, count] of Object.entries(met)) {
    expect(count, what).toBeGreaterThanOrEqual(least);
  }
});
