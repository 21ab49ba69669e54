/** Counts move paths by the public functions and compares them with the published tables. */
import { describe, expect, test } from 'vitest';
import {
  isFenFault,
  isMoveFault,
  legalMoves,
  type Position,
  parseFen,
  playMove,
} from '../../src/chess/index.ts';
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

describe.each(perftTables)('perft of $name', ({ fen, nodes }) => {
  test.each(nodes.map((count, index) => ({ depth: index + 1, count })))(
    'depth $depth: $count',
    { timeout: 120_000 },
    ({ depth, count }) => expect(perft(positionOf(fen), depth)).toBe(count),
  );
});

test('perft of an illegal en-passant capture', { timeout: 120_000 }, () => {
  const { fen, depth, nodes } = illegalEnPassant;
  expect(perft(positionOf(fen), depth)).toBe(nodes);
});
