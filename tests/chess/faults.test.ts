/**
 * The reasons for faults, held against chessops: it knows which moves a piece could make if its
 * king did not matter, so a reason that names the king must be given for these and for no others;
 * and it reads SAN on its own, so the two must accept the same moves.
 */
import { Chess, pseudoDests } from 'chessops/chess';
import { makeFen, parseFen as parseFenOfChessops } from 'chessops/fen';
import { parseSan } from 'chessops/san';
import { makeSquare } from 'chessops/util';
import { expect, test } from 'vitest';
import {
  isFenFault,
  isMoveFault,
  type MoveFault,
  type PlayedMove,
  type Position,
  parseFen,
  playMove,
  squares,
} from '../../src/chess/index.ts';
import { runs } from '../setup/runs.ts';
import { movesOf } from './against-chessops.ts';
import { perftTables } from './perft-tables.ts';
import { randomFrom } from './random.ts';

const kingMatters = /pinned to the king|would stay in check|would be in check|would open the king/;

function* positions(count: number): Generator<[Position, Chess]> {
  const random = randomFrom(16134);
  for (let made = 0; made < count; ) {
    const start = perftTables[made % perftTables.length];
    if (start === undefined) return;
    const chess = Chess.fromSetup(parseFenOfChessops(start.fen).unwrap()).unwrap();
    // A few moves from each of them, which are dense in pins and checks.
    for (let ply = 0; ply < 3 && made < count; ply++) {
      const position = parseFen(makeFen(chess.toSetup()));
      if (isFenFault(position)) throw new Error(position.reason);
      const moves = [...movesOf(chess).values()];
      const move = moves[Math.floor(random() * moves.length)];
      if (move === undefined) break;
      yield [position, chess];
      made++;
      chess.play(move);
    }
  }
}

test('a reason names the king where only the king forbids the move', () => {
  let named = 0;
  for (const [position, chess] of positions(runs(14))) {
    const context = chess.ctx();
    for (const from of chess.board[chess.turn]) {
      const piece = chess.board.get(from);
      const legal = chess.dests(from, context);
      const pseudo = pseudoDests(chess, from, context);
      for (const square of squares) {
        const written = makeSquare(from) + square;
        const result = playMove(position, written);
        const to = squareIndex(square);
        // Castling has reasons of its own, tested elsewhere.
        if (piece?.role === 'king' && Math.abs((to & 7) - (from & 7)) > 1) continue;
        if (legal.has(to)) {
          expect(isPromotionMissing(result) || !isMoveFault(result), written).toBe(true);
          continue;
        }
        if (!isMoveFault(result)) throw new Error(`${written} in ${position.fen}: ${result.san}`);
        const where = `${written} in ${position.fen}: ${result.reason}`;
        // A pawn that an en-passant capture would uncover is told so although the right is gone.
        const gone = result.reason.startsWith('taking en passant');
        if (!gone) expect(kingMatters.test(result.reason), where).toBe(pseudo.has(to));
        if (pseudo.has(to)) named++;
      }
    }
  }
  expect(named).toBeGreaterThan(runs(25));
});

test('the same spellings are read as moves', () => {
  let played = 0;
  for (const [position, chess] of positions(runs(14))) {
    for (const letter of ['', 'N', 'B', 'R', 'Q', 'K']) {
      for (const to of squares) {
        const empty = chess.board.get(squareIndex(to)) === undefined;
        const written = `${letter}${empty ? '' : 'x'}${to}`;
        // chessops does not ask for the file of a pawn that captures.
        if (letter === '' && !empty) continue;
        const theirs = parseSan(chess, written) !== undefined;
        const ours = !isMoveFault(playMove(position, written));
        expect(ours, `${written} in ${position.fen}`).toBe(theirs);
        if (ours) played++;
      }
    }
  }
  expect(played).toBeGreaterThan(runs(240));
});

function squareIndex(square: string): number {
  return (square.charCodeAt(1) - 49) * 8 + square.charCodeAt(0) - 97;
}

function isPromotionMissing(result: PlayedMove | MoveFault): boolean {
  return isMoveFault(result) && result.reason.includes('does not say to which piece');
}
