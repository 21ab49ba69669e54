import {
  createReplay,
  initialPosition,
  isMoveFault,
  numberSign,
  type Position,
  playMove,
  sideToMove,
} from '../../chess/index.ts';
import type { CourseTable } from '../../contract/course-table.ts';
import type { MainLineStep } from '../../movetext/index.ts';
import { positionOf } from '../find.ts';
import type { GameAside, GameExit, GameFault, GameMove } from './types.ts';

export interface Followed {
  readonly exit?: GameExit;
  readonly aside?: GameAside;
  readonly fault?: GameFault;
}

/** A move as it is written, with its place in the game. */
interface Placed {
  readonly text: string;
  readonly color: GameMove['color'];
  readonly number: number;
}

/**
 * Follows the main line of a game through a course, to its end. As with the games that a course
 * shows, the last position counts that the course knows, by whatever order of moves the game came
 * there. A start that the course knows counts too, but not the initial position alone.
 */
export function followMoves(
  table: CourseTable,
  start: Position,
  steps: Iterable<MainLineStep>,
): Followed {
  const replay = createReplay(start);
  let color = sideToMove(start);
  let number = Number(start.fen.slice(start.fen.lastIndexOf(' ') + 1));
  let known = start.key === initialPosition.key ? undefined : positionOf(table, start.key);
  /** The moves before and after the last known position. */
  let last: Placed | undefined;
  let next: Placed | undefined;
  let before = start.key;
  let key = start.key;
  /** The position before each move, where the course knows it. */
  let at = positionOf(table, start.key);
  let aside: GameAside | undefined;
  for (const step of steps) {
    const sign = numberSign({ number, color });
    if (step.kind !== 'move') {
      const kind = step.kind === 'text-unreadable' ? 'unreadable' : step.kind;
      return { fault: { kind, written: step.text, at: sign, reason: '' } };
    }
    const fault = replay.play(step.text);
    if (fault !== undefined) {
      const { kind, reason } = fault;
      return { fault: { kind, written: step.text, at: sign, reason } };
    }
    const move = { text: step.text, color, number };
    next ??= move;
    const previous = key;
    key = replay.key();
    const here = positionOf(table, key);
    if (aside === undefined && at !== undefined && isBesideAdvice(table, at, here)) {
      aside = {
        position: at,
        ...(last && { last: canonical(before, last) }),
        next: canonical(previous, move),
      };
    }
    at = here;
    if (here !== undefined) {
      known = here;
      before = previous;
      last = move;
      next = undefined;
    }
    if (color === 'black') number++;
    color = color === 'white' ? 'black' : 'white';
  }
  if (known === undefined) return {};
  const there = table.positions[known]?.key ?? '';
  const exit: GameExit = {
    position: known,
    ...(last && { last: canonical(before, last) }),
    ...(next && { next: canonical(there, next) }),
  };
  return { exit, ...(aside && { aside }) };
}

/** Whether the course has the move between two positions beside a move that it advises. */
function isBesideAdvice(table: CourseTable, from: number, to: number | undefined): boolean {
  const moves = table.positions[from]?.moves ?? [];
  const played = moves.find((move) => move.to === to);
  const isBeside = played?.kind === 'option' || played?.kind === 'bad';
  return isBeside && moves.some(({ kind }) => kind === 'advice');
}

/** A move in canonical SAN, from the position where it was played. */
function canonical(key: string, { text, color, number }: Placed): GameMove {
  const played = playMove({ key, fen: `${key} 0 1` }, text);
  if (isMoveFault(played)) throw new Error(`${text} was played in ${key}: ${played.reason}`);
  return { san: played.san, color, number };
}
