import {
  inUci,
  isMoveFault,
  type LegalMove,
  listMoves,
  type Position,
  playMove,
} from '../chess/index.ts';
import type { EngineFact, EngineLine } from '../facts/index.ts';
import type { FinishedSearch } from './uci/engine.ts';
import { EngineError } from './uci/engine-error.ts';

/** So many half-moves of a line are kept: what refutes a move shows within them. */
const longestLine = 6;

/**
 * What is kept of a search, in canonical SAN.
 * @throws EngineError where its move or the first of a line cannot be played: it speaks of another position.
 */
export function factOfSearch(
  position: Position,
  { best, depth, lines, isShort }: FinishedSearch,
  by: Pick<EngineFact, 'engine' | 'settings'>,
): EngineFact {
  const legal = movesByUci(position);
  if (!legal.has(best)) throw new EngineError(`its move ${best} cannot be played`);
  // A mate that was found may end a search, and so may an only move; else it was the word on another position.
  if (isShort && legal.size > 1 && lines[0]?.score.kind !== 'mate') {
    throw new EngineError(`it stopped at depth ${depth}, far short of what it was asked for`);
  }
  const firsts = new Set<string>();
  const known: EngineLine[] = [];
  for (const { score, moves } of lines) {
    const line = inSan(position, moves);
    const [first] = line;
    if (first === undefined) {
      throw new EngineError(`its line ${moves.slice(0, 2).join(' ')} cannot be played`);
    }
    if (firsts.has(first)) continue;
    firsts.add(first);
    known.push({ score, moves: line });
  }
  return { key: position.key, ...by, depth, lines: known };
}

/** As much of a line as can be played: the end of one is not to be relied on. */
function inSan(start: Position, moves: readonly string[]): string[] {
  const line: string[] = [];
  let position = start;
  for (const move of moves.slice(0, longestLine)) {
    const legal = movesByUci(position).get(move);
    const played = legal && playMove(position, legal.san);
    if (!played || isMoveFault(played)) break;
    line.push(played.san);
    position = played.after;
  }
  return line;
}

function movesByUci(position: Position): ReadonlyMap<string, LegalMove> {
  return new Map(listMoves(position).map((move) => [inUci(move), move]));
}
