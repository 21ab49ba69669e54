/**
 * What a move leaves to be taken: judged by static exchange on the square, by captures on the whole board
 * and against every answer, so that a threat, a fork or a mate in return is no loss.
 */
import { pieceAt } from '../board.ts';
import { listMoves, playSan } from '../rules.ts';
import type { PlayedMove, Position, Square } from '../types.ts';
import { pieceValues } from '../values.ts';
import { gainfulCaptures } from './exchange.ts';
import { type MaterialBudget, wonByCaptures, wonByMoves } from './material.ts';

/** A capture, and what the side that moved before has lost then. */
export interface Loss {
  readonly capture: PlayedMove;
  /** In pawns, what the move itself took set against it; more than all pieces for mate. */
  readonly lost: number;
}

export interface LossQuestion {
  /** Pawns' worth below which nothing counts. */
  readonly least: number;
  readonly budget: MaterialBudget;
  /** Captures that are shown: whatever takes on their squares counts for nothing. */
  readonly shown?: (san: string) => boolean;
}

/**
 * The capture that wins what a played move leaves, where another move would have kept it. Where the budget
 * runs out, nothing is found.
 */
export function lossAfter(
  before: Position,
  move: PlayedMove,
  { least, budget, shown = () => false }: LossQuestion,
): Loss | undefined {
  const position = move.after;
  const won = wonAtOnce(before, move);
  const captures = gainfulCaptures(position, least + won);
  if (captures.length === 0) return undefined;
  const kept = won - wonByCaptures(position, budget);
  // No other move keeps so much more: what is lost was lost before.
  if (kept > -least || wonByMoves(before, 1, budget) - kept < least) return undefined;
  const legal = listMoves(position);
  const shownSquares = new Set<Square>(
    legal.flatMap(({ san, to, capture }) => (capture && shown(san) ? [to] : [])),
  );
  for (const { from, to, promotion } of captures) {
    if (shownSquares.has(to)) continue;
    const found = legal.find(
      (each) => each.from === from && each.to === to && each.promotion === promotion,
    );
    const capture = found && playSan(position, found.san);
    if (!capture) continue;
    const lost = wonAtOnce(position, capture) - wonByMoves(capture.after, 2, budget) - won;
    if (lost >= least && budget.left > 0) return { capture, lost };
  }
  return undefined;
}

/** What a move takes and makes of a pawn, in pawns. */
function wonAtOnce(
  position: Position,
  { from, to, promotion }: Pick<PlayedMove, 'from' | 'to' | 'promotion'>,
): number {
  const taken = pieceAt(position, to)?.kind;
  const isPassing = !taken && pieceAt(position, from)?.kind === 'pawn' && from[0] !== to[0];
  const won = taken ? pieceValues[taken] : isPassing ? pieceValues.pawn : 0;
  return won + (promotion ? pieceValues[promotion] - pieceValues.pawn : 0);
}
