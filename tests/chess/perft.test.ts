/** Counts move paths by the public functions and compares them with the published tables. */
import { Chess } from 'chessops/chess';
import { perft as perftOfChessops } from 'chessops/debug';
import { parseFen as parseFenOfChessops } from 'chessops/fen';
import { describe, expect, test } from 'vitest';
import {
  isFenFault,
  isMoveFault,
  legalMoves,
  type Position,
  parseFen,
  playMove,
} from '../../src/chess/index.ts';
import { multiple } from '../setup/runs.ts';
import { illegalEnPassant, perftTables } from './perft-tables.ts';

/**
 * Counts each position once for each depth: equal keys must mean equal moves, so a key that left
 * out a right to castle or to capture en passant would spoil the count.
 */
function perft(position: Position, depth: number, known = new Map<string, number>()): number {
  const name = `${position.key} ${depth}`;
  const counted = known.get(name);
  if (counted !== undefined) return counted;
  const moves = legalMoves(position);
  if (depth === 1) return moves.length;
  let nodes = 0;
  for (const san of moves) {
    const played = playMove(position, san);
    if (isMoveFault(played)) throw new Error(`${san} in ${position.fen}: ${played.reason}`);
    nodes += perft(played.after, depth - 1, known);
  }
  known.set(name, nodes);
  return nodes;
}

function positionOf(fen: string): Position {
  const position = parseFen(fen);
  if (isFenFault(position)) throw new Error(position.reason);
  return position;
}

/** Deeper counts take minutes, and are made at night (`npm run test:full`). */
const most = multiple > 1 ? Number.POSITIVE_INFINITY : 100_000;

describe.each(perftTables)('perft of $name', ({ fen, nodes }) => {
  const depths = nodes.map((count, index) => ({ depth: index + 1, count }));
  test.each(depths.filter(({ count }) => count < most))(
    'depth $depth: $count',
    ({ depth, count }) => expect(perft(positionOf(fen), depth)).toBe(count),
  );
});

describe('perft of an illegal en-passant capture', () => {
  const { fen, depth: published, nodes } = illegalEnPassant;

  // The published count is of six moves; this one is what chessops counts.
  test('four moves, as chessops counts them', () => {
    const theirs = Chess.fromSetup(parseFenOfChessops(fen).unwrap()).unwrap();
    expect(perft(positionOf(fen), 4)).toBe(perftOfChessops(theirs, 4));
  });

  if (nodes < most) {
    test('the published count', () => {
      expect(perft(positionOf(fen), published)).toBe(nodes);
    });
  }
});
