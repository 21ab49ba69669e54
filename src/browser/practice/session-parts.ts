import type { PracticeWords } from '../../contract/words.ts';
import { make, makeButton } from '../element.ts';
import { focusable } from './focusable.ts';
import type { Board } from './show-on-board.ts';

/** The elements of a session on the page; what stands in them is up to `session-view.ts`. */
export interface SessionParts {
  /** Holds all others. */
  readonly element: HTMLElement;
  readonly heading: HTMLElement;
  /** How much is left. */
  readonly left: HTMLElement;
  readonly board: Board;
  /** What the page says, read out when it changes. */
  readonly status: HTMLElement;
  /** The author's comment on a move that was tried. */
  readonly comment: HTMLElement;
  /** Hint and solution. */
  readonly help: HTMLElement;
  /** Where the reader goes on after reading. */
  readonly onward: HTMLElement;
  readonly on: HTMLButtonElement;
  /** The line so far. */
  readonly text: HTMLElement;
}

/** What the buttons of a session do. */
export interface SessionButtons {
  readonly onStop: () => void;
  readonly onHint: () => void;
  readonly onShow: () => void;
  readonly onGoOn: () => void;
}

export function makeSessionParts(
  { practice }: PracticeWords,
  entry: HTMLElement,
  { onStop, onHint, onShow, onGoOn }: SessionButtons,
): SessionParts {
  const heading = focusable(make('h2', 'unseen', practice.session));
  const left = make('span', 'practice-left');
  const head = make('p', 'practice-head', left, ' ', makeButton(practice.stop, onStop));
  const board = document.createElement('course-board') as Board;
  board.className = 'practice-board';
  const status = make('p', 'practice-status');
  status.setAttribute('role', 'status');
  const comment = make('p', 'practice-said');
  const hint = makeButton(practice.hint, onHint);
  const help = make('p', 'practice-help', hint, makeButton(practice.show, onShow));
  const on = makeButton(practice.on, onGoOn);
  const onward = make('p', 'practice-onward', on);
  const talk = make('div', 'practice-talk', status, comment, entry, onward, help);
  const text = make('div', 'practice-text');
  const element = make('section', 'practice-session', heading, head, board, talk, text);
  element.setAttribute('aria-label', practice.session);
  return { element, heading, left, board, status, comment, help, onward, on, text };
}
