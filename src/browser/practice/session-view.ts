import { fill } from '../../contract/sentence.ts';
import type { PracticeWords } from '../../contract/words.ts';
import { moveOf } from '../../lookup/index.ts';
import { onBoard } from '../board/board-state.ts';
import { makeMoveEntry } from '../board/move-entry.ts';
import { counted } from '../counted.ts';
import { movesAt } from './board-moves.ts';
import { lineText, noteOf } from './line-text.ts';
import { sentences } from './sentences.ts';
import {
  giveHint,
  goOn,
  leaveOut,
  type Outcome,
  positionNow,
  type Session,
  showMove,
  tryMove,
} from './session.ts';
import { makeSessionParts } from './session-parts.ts';
import { showOnBoard } from './show-on-board.ts';
import { watch } from './stopwatch.ts';

/** A session on the page. */
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

export function makeSessionView(
  first: Session,
  words: PracticeWords,
  { onOutcome, onEnd }: SessionEvents,
): SessionView {
  const { practice } = words;
  let session = first;
  const clock = watch();

  const entry = makeMoveEntry(words, {
    legal: () => ('task' in session.stage ? movesHere() : []),
    onMoves: (moves) => board.make(moves),
    onUnread: say,
  });
  const parts = makeSessionParts(words, entry.element, {
    onStop: () => onEnd(session),
    onHint: () => act(giveHint(session), true),
    onShow: () => act(showMove(session)),
    onGoOn: () => act(goOn(session)),
  });
  const { element, board, left, status, comment, on } = parts;

  const movesHere = () => movesAt(session.course, positionNow(session), words);

  onBoard(board, 'course-board-move', (move) => {
    const named = movesHere().find(({ san }) => san === move.san);
    if (named !== undefined) act(tryMove(session, named.canonical, clock.isSlow()));
  });
  onBoard(board, 'course-board-refuse', ({ piece, from, to }) => {
    const { color } = piece;
    const mover = color === 'white' ? 'black' : 'white';
    if (to === undefined) say(words.notYours[mover]);
    else say(fill(words.cannotGo, { piece: words.pieces[piece.kind], from, to }));
  });

  function say(message: string): void {
    status.textContent = message;
    comment.replaceChildren();
  }

  /** `stays`: what the reader holds in his hand is the same question still. */
  function act(next: Session, stays = false): void {
    if (next === session) return;
    const before = session;
    session = next;
    if (next.outcome !== undefined && next.outcome !== before.outcome) onOutcome(next.outcome);
    if (next.asked !== before.asked) clock.start();
    if (next.stage.kind === 'end') onEnd(next);
    else render(before, stays);
  }

  function render(before: Session | undefined, stays: boolean): void {
    const { stage } = session;
    const moved = before !== undefined && !stays && positionNow(before) !== positionNow(session);
    const heldBy = document.activeElement;
    left.textContent = counted(practice.left, session.tasks.length);
    showOnBoard(board, session, words, moved || before === undefined);
    status.textContent = sentences(session, words);
    comment.replaceChildren(...commentOnTry(session));
    parts.text.replaceChildren(lineText(session, words));
    entry.clear();
    const reading = stage.kind === 'read';
    entry.element.hidden = reading;
    parts.help.hidden = stage.kind !== 'ask';
    parts.onward.hidden = !reading;
    if (reading) {
      const { next } = stage;
      on.textContent =
        next === 'on' ? practice.on : next === 'line' ? practice.nextLine : practice.finish;
    }
    placeFocus(heldBy, reading);
  }

  /** The focus never falls off the page: it goes to what one does next. */
  function placeFocus(heldBy: Element | null, reading: boolean): void {
    if (reading && (heldBy === null || heldBy === document.body || element.contains(heldBy))) {
      on.focus({ preventScroll: true });
    } else if (!reading && heldBy === on) {
      board.focusSquares();
    }
  }

  return {
    element,
    start() {
      clock.start();
      render(undefined, false);
      parts.heading.focus({ preventScroll: true });
    },
    answeredElsewhere(positions) {
      session = leaveOut(session, positions);
      left.textContent = counted(practice.left, session.tasks.length);
    },
  };
}

/** What the author says of a move that was tried and is not the one to find. */
function commentOnTry(session: Session): HTMLElement[] {
  const { verdict, course } = session;
  if (verdict?.kind !== 'bad' && verdict?.kind !== 'option') return [];
  const from = positionNow(session);
  const position = course.table.positions[from];
  const move = position && moveOf(position, verdict.san);
  const note = move && noteOf(session, { from, move });
  return note ? [note] : [];
}
