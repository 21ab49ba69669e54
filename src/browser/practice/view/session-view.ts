import { fill } from '../../../contract/sentence.ts';
import type { PracticeWords } from '../../../contract/words.ts';
import { moveOf } from '../../../lookup/index.ts';
import { onBoard } from '../../board/board-state.ts';
import { makeMoveEntry } from '../../board/move-entry.ts';
import { movesAt } from '../session/board-moves.ts';
import { viewOf } from '../session/practice-course.ts';
import {
  giveHint,
  goOn,
  leaveOut,
  type Outcome,
  positionNow,
  type Session,
  showMove,
  tryMove,
} from '../session/session.ts';
import { noteOf } from './line-text.ts';
import { renderSession } from './render-session.ts';
import { makeSessionParts } from './session-parts.ts';
import { watch } from './stopwatch.ts';

export interface SessionView {
  readonly element: HTMLElement;
  /** To be called once the element is in the page. */
  start(): void;
  /** Another tab has answered these positions. */
  answeredElsewhere(positions: ReadonlySet<number>): void;
}

export interface SessionEvents {
  /** An answer that counts was given. */
  readonly onOutcome: (outcome: Outcome) => void;
  /** Nothing is left, or the reader stops. */
  readonly onEnd: (session: Session) => void;
}

/** `title`: of what it asks, where that is not the whole course. */
export function makeSessionView(
  first: Session,
  title: string | undefined,
  words: PracticeWords,
  { onOutcome, onEnd }: SessionEvents,
): SessionView {
  let session = first;
  const clock = watch();
  /** The last move was written, not made on the board. */
  let typed = false;
  const square = viewOf(first.course, first.start.position) === 'white' ? 'f3' : 'f6';
  const entry = makeMoveEntry(words, {
    legal: () => ('task' in session.stage ? movesHere() : []),
    onMoves: (moves) => parts.board.make(moves),
    onUnread: say,
    label: words.practice.entry,
    example: fill(words.practice.entryExample, { move: `${words.letters.knight}${square}` }),
  });
  const parts = makeSessionParts(words, entry.element, {
    onStop: () => onEnd(session),
    onHint: () => act(giveHint(session), true),
    onShow: () => act(showMove(session)),
    onGoOn: () => act(goOn(session)),
  });
  const { element, board, feedback } = parts;
  const movesHere = () => movesAt(session.course, positionNow(session), words);
  const render = (moved: boolean) =>
    renderSession(parts, session, { title, words, moved, comment: commentIn(session) });

  onBoard(board, 'course-board-move', (move) => {
    const named = movesHere().find(({ san }) => san === move.san);
    if (named !== undefined) act(tryMove(session, named.canonical, clock.isSlow()));
  });
  onBoard(board, 'course-board-refuse', ({ piece, from, to }) => {
    const mover = piece.color === 'white' ? 'black' : 'white';
    if (to === undefined) say(words.notYours[mover]);
    else say(fill(words.cannotGo, { piece: words.pieces[piece.kind], from, to }));
  });

  function say(message: string): void {
    feedback.replaceChildren(message);
    feedback.hidden = false;
  }

  /** `stays`: what the reader holds in his hand is the same question still. */
  function act(next: Session, stays = false): void {
    if (next === session) return;
    const before = session;
    session = next;
    if (next.outcome !== undefined && next.outcome !== before.outcome) onOutcome(next.outcome);
    if (next.asked !== before.asked) clock.start();
    if (next.stage.kind === 'end') {
      onEnd(next);
      return;
    }
    const heldBy = document.activeElement;
    entry.clear();
    render(!stays && positionNow(before) !== positionNow(session));
    placeFocus(heldBy);
  }

  /** The focus never falls off the page: it goes to what one does next. */
  function placeFocus(heldBy: Element | null): void {
    const reading = session.stage.kind === 'read';
    const isOurs = heldBy === null || heldBy === document.body || element.contains(heldBy);
    if (reading && isOurs) {
      typed = entry.element.contains(heldBy);
      parts.on.focus({ preventScroll: true });
    } else if (!reading && heldBy === parts.on) {
      if (typed) entry.element.querySelector('input')?.focus();
      else board.focusSquares();
    }
  }

  return {
    element,
    start() {
      clock.start();
      render(true);
      parts.heading.focus({ preventScroll: true });
    },
    answeredElsewhere(positions) {
      const next = leaveOut(session, positions);
      if (next === session) return;
      session = next;
      render(false);
    },
  };
}

/** What the author says of the move that is read, or of one that was tried and is not the one to find. */
function commentIn(session: Session): HTMLElement | undefined {
  const { feedback, course, stage, line } = session;
  const last = line.at(-1);
  if (stage.kind === 'read') return last && noteOf(session, last);
  if (feedback?.kind !== 'bad' && feedback?.kind !== 'option') return undefined;
  const from = positionNow(session);
  const position = course.table.positions[from];
  const move = position && moveOf(position, feedback.san);
  return move && noteOf(session, { from, move });
}
