import type { ChapterWords } from '../../contract/words.ts';
import { make, makeButton, element as makeElement } from '../element.ts';

type StepOfTalk = 'back' | 'on' | 'again' | 'answer';

export interface Saying {
  readonly message: string;
  /** The same for ears alone: a move in words. */
  readonly spoken?: string;
  /** Lines of the exercise that are shown with it. */
  readonly lines?: readonly HTMLElement[];
}

/** Where the reader may go when an exercise has ended. */
export interface Onward {
  readonly next: string | undefined;
  readonly all: string;
}

/** What the page says to an answer, and the lines that it shows with it. */
export interface Talk {
  readonly element: HTMLElement;
  say(saying: Saying): void;
  setMade(moves: string): void;
  setSteps(back: boolean, on: boolean): void;
  /** What may be done when the exercise has ended; `isAlso`: the answer itself is not found yet. */
  setEnd(end: (Onward & { readonly isAlso: boolean }) | undefined): void;
  onStep(listener: (step: StepOfTalk) => void): void;
  focus(): void;
}

/** @param lines all those of the exercise; only the ones that are shown stand in the page. */
export function makeTalk(lines: readonly HTMLElement[], words: ChapterWords): Talk {
  const { exercise } = words;
  const verdict = make('span', '');
  const spoken = make('span', 'unseen');
  const live = make('div', '', make('p', 'verdict', verdict, spoken));
  live.setAttribute('aria-live', 'polite');
  const made = make('p', 'exercise-made');
  let listener: (step: StepOfTalk) => void = () => undefined;
  const button = (text: string, step: StepOfTalk) => makeButton(text, () => listener(step));
  const back = button(exercise.back, 'back');
  const on = button(exercise.on, 'on');
  const again = button(exercise.again, 'again');
  const answer = button(exercise.giveUp, 'answer');
  const walking = make('p', 'exercise-steps', back, on);
  const next = makeElement('a', { class: 'button' }, exercise.next);
  const all = makeElement('a', {}, exercise.all);
  const onward = make('p', 'exercise-steps', again, answer, next, all);
  walking.hidden = true;
  onward.hidden = true;
  const element = make('div', 'exercise-talk', made, live, walking, onward);
  return {
    element,
    say({ message, spoken: words = '', lines: shown = [] }) {
      verdict.textContent = message;
      spoken.textContent = words === '' ? '' : ` ${words}`;
      for (const line of lines) if (!shown.includes(line)) line.remove();
      live.append(...shown);
      walking.hidden = shown.length === 0;
    },
    setMade(moves) {
      made.textContent = moves;
    },
    setSteps(canGoBack, canGoOn) {
      back.setAttribute('aria-disabled', String(!canGoBack));
      on.setAttribute('aria-disabled', String(!canGoOn));
    },
    setEnd(end) {
      onward.hidden = end === undefined;
      if (end === undefined) return;
      again.textContent = end.isAlso ? exercise.look : exercise.again;
      answer.hidden = !end.isAlso;
      next.hidden = end.next === undefined;
      if (end.next !== undefined) next.href = end.next;
      all.href = end.all;
    },
    onStep(heard) {
      listener = heard;
    },
    focus: () => (next.hidden ? again : next).focus({ preventScroll: true }),
  };
}
