import type { PlayedMove, Position } from '../../chess/index.ts';
import { isMate, isStalemate, listMoves, playSan } from '../../chess/rules.ts';
import { type Loss, lossAfter } from '../../chess/search/loss.ts';
import type { CourseTable, TableMoveKind, TablePosition } from '../../contract/course-table.ts';
import { moveOf, positionOf } from '../../lookup/find.ts';
import { type PathMove, pathsOf } from '../../lookup/paths.ts';

/** What is said of a move: by the course, and by the board. Nothing in it is guessed. */
export interface MoveAnswer {
  readonly course: CourseAnswer;
  readonly board: BoardAnswer | undefined;
}

export type CourseAnswer =
  | {
      readonly kind: 'known';
      readonly role: TableMoveKind;
      readonly step: PathMove;
      /** What the course plays instead of what it does not advise. */
      readonly advice: readonly PathMove[];
      /** How the line goes on after a bad move. */
      readonly goesOn: readonly PathMove[];
    }
  /** It has the position that the move leads to, by another way: its index in the table. */
  | { readonly kind: 'meets'; readonly position: number; readonly last: PathMove | undefined }
  /** A move of the course's side that it does not have. */
  | { readonly kind: 'not-mine'; readonly plays: readonly PathMove[] }
  /** A move of the other side that it does not have. */
  | {
      readonly kind: 'not-theirs';
      readonly related: readonly Related[];
      /** The replies that it has here. */
      readonly treats: readonly PathMove[];
    }
  /** The course does not have the position before the move. */
  | { readonly kind: 'beyond' };

/** Moves akin to the one that was played, and what the course plays against each of them. */
export interface Related {
  readonly replies: readonly PathMove[];
  readonly answer: PathMove;
}

export type BoardAnswer =
  | { readonly kind: 'mate' | 'stalemate' }
  | { readonly kind: 'mates'; readonly move: PlayedMove }
  | ({ readonly kind: 'wins' } & Loss);

/** @param before the position in which the move was played. */
export function answerMove(table: CourseTable, before: Position, move: PlayedMove): MoveAnswer {
  return { course: courseAnswer(table, before, move), board: boardAnswer(before, move) };
}

/** So many moves of a bad line are told. */
const told = 4;

function courseAnswer(table: CourseTable, before: Position, played: PlayedMove): CourseAnswer {
  const paths = pathsOf(table);
  const from = positionOf(table, before.key);
  const here = from === undefined ? undefined : table.positions[from];
  const known = here && moveOf(here, played.san);
  const advice = here && from !== undefined ? stepsOf(table, from, here, 'advice') : [];
  if (known !== undefined && from !== undefined) {
    return {
      kind: 'known',
      role: known.kind,
      step: paths.step(from, known),
      advice,
      goesOn: known.kind === 'bad' ? lineAfter(table, known.to) : [],
    };
  }
  const reached = positionOf(table, played.after.key);
  if (reached !== undefined) return { kind: 'meets', position: reached, last: paths.last(reached) };
  if (here === undefined || from === undefined || here.moves.length === 0) {
    return { kind: 'beyond' };
  }
  if (table.side === 'both' || table.side === played.color) {
    const plays = table.side === 'both' ? stepsOf(table, from, here, 'option') : advice;
    return { kind: 'not-mine', plays };
  }
  const treats = stepsOf(table, from, here, 'reply');
  return { kind: 'not-theirs', related: relatedTo(table, before, played, treats), treats };
}

function stepsOf(
  table: CourseTable,
  from: number,
  { moves }: TablePosition,
  kind: TableMoveKind,
): PathMove[] {
  const paths = pathsOf(table);
  return moves.filter((move) => move.kind === kind).map((move) => paths.step(from, move));
}

/** The moves that the course has first, from a position on. */
function lineAfter(table: CourseTable, position: number): PathMove[] {
  const line: PathMove[] = [];
  for (let at = position; line.length < told; ) {
    const [next] = table.positions[at]?.moves ?? [];
    if (next === undefined) break;
    line.push(pathsOf(table).step(at, next));
    at = next.to;
  }
  return line;
}

/**
 * The replies of the course that are akin to a move: of the same piece, or to the same square; with what the
 * course advises against each, if that could be played against the move too. The same answer is told once.
 */
function relatedTo(
  table: CourseTable,
  before: Position,
  played: PlayedMove,
  treats: readonly PathMove[],
): Related[] {
  const legal = listMoves(before);
  const possible = new Set(listMoves(played.after).map(({ san }) => bare(san)));
  const groups = new Map<string, { replies: PathMove[]; answer: PathMove }>();
  for (const reply of treats) {
    const made = legal.find(({ san }) => san === reply.move.san);
    if (made === undefined || (made.from !== played.from && made.to !== played.to)) continue;
    const there = table.positions[reply.move.to];
    const [answer] = there ? stepsOf(table, reply.move.to, there, 'advice') : [];
    if (answer === undefined || !possible.has(bare(answer.move.san))) continue;
    const group = groups.get(answer.move.san);
    if (group === undefined) groups.set(answer.move.san, { replies: [reply], answer });
    else group.replies.push(reply);
  }
  return [...groups.values()];
}

function bare(san: string): string {
  return san.replace(/[+#]$/, '');
}

/** Pawns' worth that is spoken of: a pawn alone is often given. */
const least = 2;
/** Positions that are looked at: some tenths of a second on a slow phone. */
const most = 60_000;

function boardAnswer(before: Position, move: PlayedMove): BoardAnswer | undefined {
  if (isMate(move.after)) return { kind: 'mate' };
  if (isStalemate(move.after)) return { kind: 'stalemate' };
  const mating = listMoves(move.after).find(({ san }) => san.endsWith('#'));
  const mate = mating && playSan(move.after, mating.san);
  if (mate !== undefined) return { kind: 'mates', move: mate };
  const loss = lossAfter(before, move, { least, budget: { left: most } });
  return loss && { kind: 'wins', ...loss };
}
