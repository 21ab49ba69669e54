/**
 * A walk along the answer of an exercise: the reader finds the moves of his side, those of the other side are played.
 * Data in, data out: it knows neither the page nor the rules of chess.
 */

export interface LineMove {
  /** What tells it from other moves of its position: `Position.key` of the one that it leads to, or its UCI. */
  readonly id: string;
  /** Marked `?`, `??` or `?!`: shown by the author, not asked for. */
  readonly bad?: boolean;
  /** The moves from there: the first continues the line, others are variations. */
  readonly children: readonly LineMove[];
}

export interface Lines<Move extends LineMove> {
  readonly answer: readonly Move[];
  readonly also: readonly Move[];
  readonly wrong: readonly Move[];
}

/** Where a walk stands, with the reader's side to move. */
export interface Walk<Move extends LineMove> {
  readonly made: readonly Move[];
  /** What the lines have from here; several lines may share their first moves. */
  readonly next: readonly Move[];
  /** Whether he has left the answer for a move that is good too. */
  readonly also: boolean;
}

/** What a move is at a place of a walk. */
export type MoveResult<Move extends LineMove> =
  /** Of the lines: asked for, or good too. */
  | {
      readonly kind: 'right';
      readonly move: Move;
      readonly also: boolean;
      /** The move that the other side answers with, where the line goes on. */
      readonly reply: Move | undefined;
      /** Where the reader goes on to find moves; absent where there is nothing left to find. */
      readonly walk: Walk<Move> | undefined;
    }
  | { readonly kind: 'wrong'; readonly move: Move }
  | { readonly kind: 'unknown' };

export function beginWalk<Move extends LineMove>(lines: Lines<Move>): Walk<Move> {
  return { made: [], next: [...lines.answer, ...lines.also, ...lines.wrong], also: false };
}

/** The moves that are asked for at a place, the first of them the main one. */
export function askedFor<Move extends LineMove>(
  { next, made }: Walk<Move>,
  lines: Lines<Move>,
): Move[] {
  const others = made.length === 0 ? [...lines.also, ...lines.wrong] : [];
  return next.filter((move) => move.bad !== true && !others.includes(move));
}

export function takeStep<Move extends LineMove>(
  walk: Walk<Move>,
  id: string,
  lines: Lines<Move>,
): MoveResult<Move> {
  const named = walk.next.filter((move) => move.id === id);
  const isFirst = walk.made.length === 0;
  const good = named.filter(
    (move) => move.bad !== true && !(isFirst && lines.wrong.includes(move)),
  );
  const [move] = good;
  const [shown] = named;
  if (move === undefined) {
    return shown === undefined ? { kind: 'unknown' } : { kind: 'wrong', move: shown };
  }
  const also = walk.also || (isFirst && !lines.answer.includes(move));
  const replies = childrenOf(good);
  const [reply] = replies;
  const next =
    reply === undefined ? [] : childrenOf(replies.filter(({ id: other }) => other === reply.id));
  const goesOn = next.some(({ bad }) => bad !== true);
  const made = reply === undefined ? [...walk.made, move] : [...walk.made, move, reply];
  return { kind: 'right', move, also, reply, walk: goesOn ? { made, next, also } : undefined };
}

/** How many moves the reader finds from a place to the end of the main line. */
export function movesToFind<Move extends LineMove>(walk: Walk<Move>, lines: Lines<Move>): number {
  let count = 0;
  for (let at: Walk<Move> | undefined = walk; at !== undefined; ) {
    const main: Move | undefined = askedFor(at, lines)[0];
    if (main === undefined) break;
    count += 1;
    const step: MoveResult<Move> = takeStep(at, main.id, lines);
    at = step.kind === 'right' ? step.walk : undefined;
  }
  return count;
}

function childrenOf<Move extends LineMove>(moves: readonly Move[]): Move[] {
  return moves.flatMap(({ children }) => children as readonly Move[]);
}
