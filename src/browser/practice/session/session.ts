import type { Color } from '../../../chess/types.ts';
import type { LineStart } from '../../../contract/course-notes.ts';
import type { TableMove } from '../../../contract/course-table.ts';
import { moveOf, noteName } from '../../../lookup/index.ts';
import type { How } from '../store/item.ts';
import {
  type MoveFrom,
  type Path,
  type PracticeCourse,
  pathOn,
  pathTo,
} from './practice-course.ts';

/** A move that the reader is to find in this session. */
export interface Task {
  /** Index of the position in the table. */
  readonly position: number;
  /** It is shown before it is asked: the reader has not seen it, or it has changed. */
  readonly show?: 'new' | 'changed' | undefined;
  /** The first answer has been given, and counts; what follows is for this session only. */
  readonly graded?: boolean;
  /** It is not asked before so many questions have been put. */
  readonly notBefore?: number;
}

export interface Feedback {
  readonly kind: 'right' | 'option' | 'bad' | 'other' | 'shown' | 'not-shown' | 'given';
  /** Canonical SAN of the move that is spoken of. */
  readonly san: string;
}

export type Stage =
  /** The course's move is named; the reader plays it. */
  | { readonly kind: 'show'; readonly task: Task }
  | {
      readonly kind: 'ask';
      readonly task: Task;
      readonly misses: readonly string[];
      readonly hinted: boolean;
    }
  /** The move stands on the board; the reader goes on when what is said of it has been read. */
  | { readonly kind: 'read'; readonly next: 'on' | 'line' | 'end' }
  | { readonly kind: 'end' };

/** One answer that counted. */
export interface Outcome {
  readonly position: number;
  readonly how: How;
  /** The number of the asked move in its line. */
  readonly turn: Turn;
  /** Canonical SAN of the first wrong try. */
  readonly tried?: string | undefined;
}

/** The full-move number of a move, from 1, and who makes it. */
export interface Turn {
  readonly number: number;
  readonly color: Color;
}

/** A session of practice: plain data, moved on by `begin`, `tryMove`, `giveHint`, `showMove`, `goOn`. */
export interface Session {
  readonly course: PracticeCourse;
  readonly chapters: ReadonlySet<number>;
  /** What is left, the present one among it. */
  readonly tasks: readonly Task[];
  /** The positions that were shown or asked so far, in that order, each once. */
  readonly met: readonly number[];
  /** Questions put so far. */
  readonly asked: number;
  /** The line on the board: where it began and its moves. */
  readonly start: LineStart;
  readonly line: readonly Ply[];
  readonly stage: Stage;
  readonly feedback?: Feedback | undefined;
  /** Of the last act; to be kept. */
  readonly outcome?: Outcome | undefined;
  readonly outcomes: readonly Outcome[];
}

/** A move on the board; `found` where the reader made it or was shown it, and did not merely pass it. */
export interface Ply extends MoveFrom {
  readonly found: boolean;
}

/** Questions between a miss, or a first showing, and the next time the same is asked. */
const pause = 2;

export function begin(
  course: PracticeCourse,
  tasks: readonly Task[],
  chapters: ReadonlySet<number>,
): Session {
  const start = { chapter: 0, position: 0, number: 1 };
  const empty = { course, chapters, tasks, met: [], asked: 0, start, line: [] } as const;
  return advance({ ...empty, outcomes: [], stage: { kind: 'end' } });
}

/** The position on the board: an index in the table. */
export function positionNow({ start, line }: Session): number {
  return line.at(-1)?.move.to ?? start.position;
}

/** The number of the line's next move after so many of its own. */
export function turnAfter(
  { course, start }: Pick<Session, 'course' | 'start'>,
  plies: number,
): Turn {
  const [, side] = course.table.positions[start.position]?.key.split(' ') ?? [];
  const ply = start.number * 2 + (side === 'b' ? 1 : 0) + plies;
  return { number: ply >> 1, color: ply % 2 === 0 ? 'white' : 'black' };
}

/** The reader plays a legal move. `slow`: it took long. */
export function tryMove(before: Session, san: string, slow: boolean): Session {
  const { stage, course } = before;
  if (stage.kind !== 'show' && stage.kind !== 'ask') return before;
  const session = { ...before, outcome: undefined };
  const { position } = stage.task;
  const here = course.table.positions[position];
  const move = here && moveOf(here, san);
  if (stage.kind === 'show') {
    if (move?.kind !== 'advice') return say(session, { kind: 'not-shown', san: adviceAt(session) });
    const later = { ...stage.task, show: undefined, notBefore: session.asked + pause };
    const { tasks } = replace(session, later);
    return played({ ...session, tasks }, move, { kind: 'shown', san });
  }
  if (move?.kind === 'advice') return found(session, stage, move, slow);
  if (move?.kind === 'option') return say(session, { kind: 'option', san });
  const missed = { ...stage, misses: [...stage.misses, san] };
  const feedback = { kind: move?.kind === 'bad' ? 'bad' : 'other', san } as const;
  return grade({ ...session, stage: missed, feedback }, 'wrong');
}

export function giveHint(session: Session): Session {
  const { stage } = session;
  if (stage.kind !== 'ask') return session;
  return { ...session, stage: { ...stage, hinted: true }, feedback: undefined, outcome: undefined };
}

export function showMove(session: Session): Session {
  const { stage } = session;
  const move = adviceMove(session);
  if (stage.kind !== 'ask' || move === undefined) return session;
  const again = putOff(grade(session, 'shown'));
  return { ...again, ...rest(again, move), feedback: { kind: 'given', san: move.san } };
}

/** What was said has been read. */
export function goOn(session: Session): Session {
  if (session.stage.kind !== 'read') return session;
  return advance({ ...session, feedback: undefined, outcome: undefined });
}

/** Leaves out what has been answered elsewhere; what is on the board stays. */
export function leaveOut(session: Session, positions: ReadonlySet<number>): Session {
  const now = 'task' in session.stage ? session.stage.task.position : undefined;
  const tasks = session.tasks.filter(
    ({ position, graded }) => graded || position === now || !positions.has(position),
  );
  return tasks.length === session.tasks.length ? session : { ...session, tasks };
}

/** Canonical SAN of what the course advises in the position on the board. */
export function adviceAt(session: Session): string {
  return adviceMove(session)?.san ?? '';
}

function adviceMove({ stage, course }: Session): TableMove | undefined {
  if (!('task' in stage)) return undefined;
  const { moves } = course.table.positions[stage.task.position] ?? { moves: [] };
  return moves.find(({ kind }) => kind === 'advice');
}

function say(session: Session, feedback: Feedback): Session {
  return { ...session, feedback, outcome: undefined };
}

function found(
  session: Session,
  stage: Extract<Stage, { kind: 'ask' }>,
  move: TableMove,
  slow: boolean,
): Session {
  const feedback = { kind: 'right', san: move.san } as const;
  if (stage.misses.length > 0) return played(putOff(session), move, feedback);
  const graded = grade(session, slow || stage.hinted ? 'slow' : 'known');
  const tasks = graded.tasks.filter(({ position }) => position !== stage.task.position);
  return played({ ...graded, tasks }, move, feedback);
}

/** The first answer of a task counts. */
function grade(session: Session, how: How): Session {
  const { stage } = session;
  if (stage.kind !== 'ask' || stage.task.graded) return { ...session, outcome: undefined };
  const task = { ...stage.task, graded: true };
  const [tried] = stage.misses;
  const turn = turnAfter(session, session.line.length);
  const outcome = { position: task.position, how, turn, ...(tried !== undefined && { tried }) };
  return {
    ...replace(session, task),
    stage: { ...stage, task },
    outcome,
    outcomes: [...session.outcomes, outcome],
  };
}

function putOff(session: Session): Session {
  if (session.stage.kind !== 'ask') return session;
  return replace(session, { ...session.stage.task, notBefore: session.asked + pause });
}

function replace(session: Session, task: Task): Session {
  const tasks = session.tasks.map((each) => (each.position === task.position ? task : each));
  return { ...session, tasks };
}

/** A move of the reader stands on the board. Without anything to read, the line goes on at once. */
function played(session: Session, move: TableMove, feedback: Feedback): Session {
  const from = positionNow(session);
  const after = { ...session, ...rest(session, move), feedback };
  const hasNote = session.course.notes.notes[noteName(from, move.san)] !== undefined;
  if (hasNote || after.stage.next !== 'on') return after;
  return { ...advance(after), feedback, outcome: after.outcome };
}

function rest(session: Session, move: TableMove) {
  const line = [...session.line, { from: positionNow(session), move, found: true }];
  const next = nextOf({ ...session, line });
  const way = next === undefined ? 'end' : next.start === undefined ? 'on' : 'line';
  return { line, stage: { kind: 'read', next: way } } as const;
}

/** To the next question: on in this line if it leads to one, else along another line. */
function advance(session: Session): Session {
  const next = nextOf(session);
  const task = session.tasks.find(({ position }) => position === next?.target);
  if (next === undefined || task === undefined) {
    return { ...session, tasks: [], stage: { kind: 'end' } };
  }
  const plies = next.steps.map((step) => ({ ...step, found: false }));
  return {
    ...session,
    asked: session.asked + 1,
    met: session.met.includes(task.position) ? session.met : [...session.met, task.position],
    start: next.start ?? session.start,
    line: next.start === undefined ? [...session.line, ...plies] : plies,
    stage:
      task.show === undefined
        ? { kind: 'ask', task, misses: [], hinted: false }
        : { kind: 'show', task },
  };
}

function nextOf(session: Session): Path | undefined {
  const { tasks, asked, course, chapters, line } = session;
  const ready = tasks.filter(({ notBefore = 0 }) => notBefore <= asked);
  const open = ready.length > 0 ? ready : tasks;
  const [first] = open;
  if (first === undefined) return undefined;
  const wanted = new Set(open.map(({ position }) => position));
  const on = line.length === 0 ? undefined : pathOn(course, positionNow(session), wanted);
  return on ?? pathTo(course, first.position, chapters);
}
