import {
  createReplay,
  fullMoveNumber,
  initialPosition,
  isMoveFault,
  numberSign,
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

/**
 * Follows the main line of a game through a course, to its end. As with the games that a course
 * shows, the last position counts that the course knows, by whatever order of moves the game came
 * there. A start that the course knows counts too, but not the initial position alone, nor what comes before
 * the course's subject.
 */
export function followMoves(table: CourseTable, start: Position, line: MainLine): Followed {
  replay.begin(start);
  const index = indexOf(table);
  const firstPly = 2 * fullMoveNumber(start) + (sideToMove(start) === 'white' ? 0 : 1);
  let played = 0;
  let known = start.key === initialPosition.key ? undefined : replay.placeIn(index);
  /** How many moves lead to the last known position; the last of them, the position before it if known, and the next. */
  let reached = 0;
  let last = '';
  let before: number | undefined;
  let next = '';
  /** The position before each move, where the course knows it. */
  let at = replay.placeIn(index);
  let aside: GameAside | undefined;
  const keyOf = (place: number) => table.positions[place]?.key ?? '';
  const exitAt = (position: number): GameExit => {
    if (reached === 0) return { position };
    const key = before === undefined ? replay.keyAfter(reached - 1) : keyOf(before);
    return { position, last: canonical(key, last, firstPly + reached - 1) };
  };
  for (let step = line.next(); step !== undefined; step = line.next()) {
    if (typeof step !== 'string') {
      const kind = step.kind === 'text-unreadable' ? 'unreadable' : step.kind;
      return faultAt(firstPly + played, step.text, { kind, reason: '' });
    }
    const fault = replay.play(step);
    if (fault !== undefined) return faultAt(firstPly + played, step, fault);
    if (played === reached) next = step;
    const here = replay.placeIn(index);
    if (aside === undefined && at !== undefined && isBesideAdvice(table, at, here)) {
      aside = { ...exitAt(at), next: canonical(keyOf(at), step, firstPly + played) };
    }
    played++;
    if (here !== undefined) {
      known = here;
      reached = played;
      last = step;
      before = at;
    }
    at = here;
  }
  if (known === undefined || isBefore(table, known)) return {};
  const exit = {
    ...exitAt(known),
    ...(reached < played && { next: canonical(keyOf(known), next, firstPly + reached) }),
  };
  return { exit, ...(aside && { aside }) };
}

/** One board for all games: most of the time of a new one goes into its memory. */
const replay = createReplay(initialPosition);

/** Whose move it is, and which, counted in half-moves: two for each full move. */
function placeInGame(ply: number): Pick<GameMove, 'color' | 'number'> {
  return { color: ply % 2 === 0 ? 'white' : 'black', number: Math.floor(ply / 2) };
}

function faultAt(
  ply: number,
  written: string,
  { kind, reason }: Pick<GameFault, 'kind' | 'reason'>,
): Followed {
  return { fault: { kind, written, at: numberSign(placeInGame(ply)), reason } };
}

/** Whether the course has the move between two positions beside a move that it advises. */
function isBesideAdvice(table: CourseTable, from: number, to: number | undefined): boolean {
  const moves = table.positions[from]?.moves ?? [];
  const played = moves.find((move) => move.to === to);
  const isBeside = played?.kind === 'option' || played?.kind === 'bad';
  return isBeside && moves.some(({ kind }) => kind === 'advice') && !isBefore(table, from);
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
function canonical(key: string, text: string, ply: number): GameMove {
  const name = `${key} ${text}`;
  let san = written.get(name);
  if (san === undefined) {
    const played = playForgiving({ key, fen: `${key} 0 1` }, text);
    if (isMoveFault(played)) throw new Error(`${text} was played in ${key}: ${played.reason}`);
    if (written.size >= mostWritten) written.clear();
    san = played.san;
    written.set(name, san);
  }
  return { san, ...placeInGame(ply) };
}
