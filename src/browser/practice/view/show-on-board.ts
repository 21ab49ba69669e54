import { sideToMove } from '../../../chess/index.ts';
import type { PracticeWords } from '../../../contract/words.ts';
import { noteName } from '../../../lookup/index.ts';
import type { CourseBoard } from '../../board/course-board.ts';
import { describe } from '../../words.ts';
import { movesAt, positionAt, squaresOfStep } from '../session/board-moves.ts';
import { viewOf } from '../session/practice-course.ts';
import { adviceAt, positionNow, type Session } from '../session/session.ts';

/** The element is defined by the script of every page; here it is only used. */
export type Board = Pick<CourseBoard, 'show' | 'make' | 'focusSquares'> & HTMLElement;

/** Shows where the session stands. `moved`: the last move has just been made, and glides. */
export function showOnBoard(
  board: Board,
  session: Session,
  words: PracticeWords,
  moved: boolean,
): void {
  const { course, stage, line } = session;
  const here = positionNow(session);
  const position = positionAt(course, here);
  const last = line.at(-1);
  const lastMove = last && squaresOfStep(course, last);
  const note =
    last?.found && stage.kind === 'read'
      ? course.notes.notes[noteName(last.from, last.move.san)]
      : undefined;
  board.show({
    placement: position.fen,
    view: viewOf(course, here),
    turn: sideToMove(position),
    description: describe(position.fen.slice(0, position.fen.indexOf(' ')), words),
    legal: 'task' in stage ? movesAt(course, here, words) : [],
    marks: marksOf(session) ?? note?.marks,
    arrows: note?.arrows,
    lastMove,
    glide: moved ? lastMove : undefined,
  });
}

/** The squares of a move that is shown; of one that is hinted at, where it comes from. */
function marksOf(session: Session): readonly string[] | undefined {
  const { stage } = session;
  if (stage.kind !== 'show' && !(stage.kind === 'ask' && stage.hinted)) return undefined;
  const { from, to } = adviceSquares(session);
  return stage.kind === 'show' ? [from, to] : [from];
}

/** Where the advised move comes from, where it goes, and the piece that makes it. */
export function adviceSquares(session: Session) {
  const position = session.course.table.positions[positionNow(session)];
  const move = position?.moves.find(({ san }) => san === adviceAt(session));
  if (move === undefined) throw new Error('the course advises nothing here');
  return squaresOfStep(session.course, { from: positionNow(session), move });
}
