import { fill } from '../../contract/sentence.ts';
import type { PracticeWords } from '../../contract/words.ts';
import { moveOf } from '../../lookup/index.ts';
import { onBoard } from '../board/board-state.ts';
import { makeMoveEntry } from '../board/move-entry.ts';
import { counted } from '../counted.ts';
import { make, makeButton } from '../element.ts';
import { movesAt } from './board-moves.ts';
import { focusable } from './focusable.ts';
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
import { type Board, showOnBoard } from './show-on-board.ts';
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

  const element = make('section', 'practice-session');
  const heading = focusable(make('h2', 'unseen', practice.session));
  const left = make('span', 'practice-left');
  const stop = makeButton(practice.stop, () => onEnd(session));
  const head = make('p', 'practice-head', left, ' ', stop);
  const board = document.createElement('course-board') as Board;
  board.className = 'practice-board';
  const status = make('p', 'practice-status');
  status.setAttribute('role', 'status');
  const said = make('p', 'practice-said');
  const entry = makeMoveEntry(words, {
    legal: () => ('task' in session.stage ? movesHere() : []),
    onMoves: (moves) => board.make(moves),
    onUnread: tell,
  });
  const hint = makeButton(practice.hint, () => act(giveHint(session), true));
  const show = makeButton(practice.show, () => act(showMove(session)));
  const help = make('p', 'practice-help', hint, show);
  const on = makeButton(practice.on, () => act(goOn(session)));
  const onward = make('p', 'practice-onward', on);
  const talk = make('div', 'practice-talk', status, said, entry.element, onward, help);
  const line = make('div', 'practice-text');
  element.append(heading, head, board, talk, line);
  element.setAttribute('aria-label', practice.session);

  const movesHere = () => movesAt(session.course, positionNow(session), words);

  onBoard(board, 'course-board-move', (move) => {
    const named = movesHere().find(({ san }) => san === move.san);
    if (named !== undefined) act(tryMove(session, named.canonical, clock.isSlow()));
  });
  onBoard(board, 'course-board-refuse', ({ piece, from, to }) => {
    const { color } = piece;
    const mover = color === 'white' ? 'black' : 'white';
    if (to === undefined) tell(words.notYours[mover]);
    else tell(fill(words.cannotGo, { piece: words.pieces[piece.kind], from, to }));
  });

  function tell(message: string): void {
    status.textContent = message;
    said.replaceChildren();
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
    const { stage, verdict } = session;
    const moved = before !== undefined && !stays && positionNow(before) !== positionNow(session);
    const heldBy = document.activeElement;
    left.textContent = counted(practice.left, session.tasks.length);
    showOnBoard(board, session, words, moved || before === undefined);
    status.textContent = sentences(session, words);
    const tried =
      verdict?.kind === 'bad' || verdict?.kind === 'option' ? noteOnTry(verdict.san) : undefined;
    said.replaceChildren(...(tried ? [tried] : []));
    line.replaceChildren(lineText(session, words));
    entry.clear();
    const reading = stage.kind === 'read';
    entry.element.hidden = reading;
    help.hidden = stage.kind !== 'ask';
    onward.hidden = !reading;
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

  function noteOnTry(san: string): HTMLElement | undefined {
    const from = positionNow(session);
    const position = session.course.table.positions[from];
    const move = position && moveOf(position, san);
    return move && noteOf(session, { from, move });
  }

  return {
    element,
    start() {
      clock.start();
      render(undefined, false);
      heading.focus({ preventScroll: true });
    },
    answeredElsewhere(positions) {
      session = leaveOut(session, positions);
      left.textContent = counted(practice.left, session.tasks.length);
    },
  };
}
