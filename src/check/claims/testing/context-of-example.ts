import {
  isFenFault,
  isMoveFault,
  type PlayedMove,
  type Position,
  parseFen,
  playMove,
} from '../../../chess/index.ts';
import type { ClaimContext, ClaimExample } from '../define-claim.ts';
import { searchBudget } from './search-budget.ts';

/** What the claim of an example is judged by. */
export function contextOfExample(example: ClaimExample): ClaimContext {
  let position = positionOf(example.fen);
  let before: Position | undefined;
  const played: PlayedMove[] = [];
  for (const san of example.moves ?? []) {
    const move = playMove(position, san);
    if (isMoveFault(move)) throw new Error(`${san}: ${move.reason}`);
    played.push(move);
    before = position;
    position = move.after;
  }
  return {
    position,
    ...(before && { before }),
    side: example.side ?? 'white',
    covered: example.covered ?? [],
    castlings: () => played.filter(({ san }) => san.startsWith('O-O')),
    labelled(name) {
      const fen = example.labels?.[name];
      return fen === undefined ? undefined : positionOf(fen);
    },
    ...searchBudget,
  };
}

function positionOf(fen: string): Position {
  const position = parseFen(fen);
  if (isFenFault(position)) throw new Error(`${fen}: ${position.reason}`);
  return position;
}
