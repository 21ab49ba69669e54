import {
  createReplay,
  fullMoveNumber,
  initialPosition,
  isMoveFault,
  numberSign,
  otherColor,
  type Position,
  PositionIndex,
  playForgiving,
  sideToMove,
} from '../../chess/index.ts';
import type { CourseTable } from '../../contract/course-table.ts';
import type { MainLine } from '../../movetext/index.ts';
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
 * there. A start that the course knows counts too, but not the initial position alone, nor what comes before
 * the course's subject.
 */
export function followMoves(table: CourseTable, start: Position, line: MainLine): Followed {
  const replay = createReplay(start);
  const index = indexOf(table);
  let color = sideToMove(start);
  let number = fullMoveNumber(start);
  let known = start.key === initialPosition.key ? undefined : replay.placeIn(index);
  /** The moves before and after the last known position, and the position before them. */
  let last: Placed | undefined;
  let next: Placed | undefined;
  let before = start.key;
  /** The position before each move, where the course knows it. */
  let at = replay.placeIn(index);
  let aside: GameAside | undefined;
  for (let step = line.next(); step !== undefined; step = line.next()) {
    const move = { text: step.text, color, number };
    if (step.kind !== 'move') {
      const kind = step.kind === 'text-unreadable' ? 'unreadable' : step.kind;
      return faultAt(move, kind, '');
    }
    const fault = replay.play(step.text);
    if (fault !== undefined) return faultAt(move, fault.kind, fault.reason);
    next ??= move;
    const here = replay.placeIn(index);
    if (at !== undefined && here === undefined) before = replay.keyBefore(2);
    if (aside === undefined && at !== undefined && isBesideAdvice(table, at, here)) {
      aside = {
        position: at,
        ...(last && { last: canonical(replay.keyBefore(2), last) }),
        next: canonical(replay.keyBefore(1), move),
      };
    }
    at = here;
    if (here !== undefined) {
      known = here;
      last = move;
      next = undefined;
    }
    if (color === 'black') number++;
    color = otherColor(color);
  }
  if (known === undefined || isBefore(table, known)) return {};
  if (at !== undefined) before = replay.keyBefore(1);
  const there = table.positions[known]?.key ?? '';
  const exit: GameExit = {
    position: known,
    ...(last && { last: canonical(before, last) }),
    ...(next && { next: canonical(there, next) }),
  };
  return { exit, ...(aside && { aside }) };
}

function faultAt(
  { text, color, number }: Placed,
  kind: GameFault['kind'],
  reason: string,
): Followed {
  return { fault: { kind, written: text, at: numberSign({ number, color }), reason } };
}

/** Whether the course has the move between two positions beside a move that it advises. */
function isBesideAdvice(table: CourseTable, from: number, to: number | undefined): boolean {
  if (isBefore(table, from)) return false;
  const moves = table.positions[from]?.moves ?? [];
  const played = moves.find((move) => move.to === to);
  const isBeside = played?.kind === 'option' || played?.kind === 'bad';
  return isBeside && moves.some(({ kind }) => kind === 'advice');
}

function isBefore({ before }: CourseTable, position: number): boolean {
  return before?.includes(position) === true;
}

const indices = new WeakMap<CourseTable, PositionIndex>();

function indexOf(table: CourseTable): PositionIndex {
  const found = indices.get(table) ?? new PositionIndex(table.positions.map(({ key }) => key));
  indices.set(table, found);
  return found;
}

/** Moves in canonical SAN by position and spelling: most games leave a course in the same few ways. */
const written = new Map<string, string>();
const mostWritten = 10_000;

/** A move in canonical SAN, from the position where it was played. */
function canonical(key: string, { text, color, number }: Placed): GameMove {
  const name = `${key} ${text}`;
  const known = written.get(name);
  if (known !== undefined) return { san: known, color, number };
  const played = playForgiving({ key, fen: `${key} 0 1` }, text);
  if (isMoveFault(played)) throw new Error(`${text} was played in ${key}: ${played.reason}`);
  if (written.size >= mostWritten) written.clear();
  written.set(name, played.san);
  return { san: played.san, color, number };
}
