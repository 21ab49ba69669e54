import type { PracticeWords } from '../../../contract/words.ts';
import { element, make, makeButton } from '../../element.ts';
import { focusable } from './focusable.ts';
import type { Board } from './show-on-board.ts';
import { makeStrip } from './strip.ts';

/** The elements of a session on the page; what stands in them is up to `session-view.ts`. */
export interface SessionParts {
  /** Holds all others. */
  readonly element: HTMLElement;
  readonly about: HTMLElement;
  readonly strip: HTMLElement;
  readonly count: HTMLElement;
  /** What is asked, or what came of it. */
  readonly heading: HTMLElement;
  /** For who does not see it: the course that asks now, where several are practised as one. */
  readonly home: HTMLElement;
  /** The other side's move, for who does not see it. */
  readonly before: HTMLElement;
  readonly feedback: HTMLElement;
  readonly line: HTMLElement;
  readonly comment: HTMLElement;
  readonly board: Board;
  /** Hint, solution and the way out. */
  readonly help: HTMLElement;
  /** What is only of use while a move is asked. */
  readonly aids: readonly HTMLElement[];
  /** Where the reader goes on after reading. */
  readonly onward: HTMLElement;
  readonly on: HTMLButtonElement;
}

export interface SessionButtons {
  readonly onStop: () => void;
  readonly onHint: () => void;
  readonly onShow: () => void;
  readonly onGoOn: () => void;
}

export function makeSessionParts(
  words: PracticeWords,
  entry: HTMLElement,
  { onStop, onHint, onShow, onGoOn }: SessionButtons,
): SessionParts {
  const { practice } = words;
  const board = document.createElement('course-board') as Board;
  board.className = 'practice-board';
  const about = make('p', 'practice-about');
  const strip = makeStrip(words);
  const count = make('p', 'practice-count');
  const heading = focusable(make('h1', ''));
  const home = make('span', 'unseen');
  const before = make('span', 'unseen');
  const feedback = make('p', 'practice-verdict');
  const comment = make('p', 'practice-said');
  // Read out as a whole whenever something of it changes.
  const status = element(
    'div',
    { class: 'practice-status', role: 'status', 'aria-atomic': 'true' },
    home,
    heading,
    before,
    feedback,
    comment,
  );
  const line = make('p', 'practice-line');
  const hint = makeButton(practice.hint, onHint, 'practice-hint');
  const show = makeButton(practice.show, onShow);
  const help = make('p', 'practice-help', hint, show, makeButton(practice.stop, onStop));
  const on = makeButton(practice.on, onGoOn, 'act');
  const onward = make('p', 'practice-onward', on);
  const talk = make('div', 'practice-talk', about, strip, count, status, line);
  talk.append(onward, entry, help);
  const whole = make('section', 'practice-session', make('div', 'practice-desk', board), talk);
  return {
    element: whole,
    about,
    strip,
    count,
    heading,
    home,
    before,
    feedback,
    line,
    comment,
    board,
    help,
    aids: [hint, show],
    onward,
    on,
  };
}
