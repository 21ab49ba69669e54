import type { ChapterWords } from '../../contract/words.ts';
import { make, makeButton } from '../element.ts';

type StepOfTalk = 'back' | 'on' | 'again';

/** What the page says to an answer, and the lines that it shows with it. */
export interface Talk {
  readonly element: HTMLElement;
  say(message: string, lines: readonly HTMLElement[]): void;
  setSteps(back: boolean, on: boolean): void;
  onStep(listener: (step: StepOfTalk) => void): void;
  focus(): void;
}

/** @param lines all those of the exercise; only the ones that are shown stand in the page. */
export function makeTalk(lines: readonly HTMLElement[], words: ChapterWords): Talk {
  const verdict = make('p', 'verdict');
  const live = make('div', '', verdict);
  live.setAttribute('aria-live', 'polite');
  let listener: (step: StepOfTalk) => void = () => undefined;
  const back = sign('←', words.back, () => listener('back'));
  const on = sign('→', words.on, () => listener('on'));
  const again = makeButton(words.exercise.again, () => listener('again'));
  const steps = make('p', 'exercise-steps', back, on, again);
  const element = make('div', 'exercise-talk', live, steps);
  return {
    element,
    say(message, shown) {
      verdict.textContent = message;
      for (const line of lines) if (!shown.includes(line)) line.remove();
      live.append(...shown);
      steps.hidden = shown.length === 0;
    },
    setSteps(canGoBack, canGoOn) {
      back.setAttribute('aria-disabled', String(!canGoBack));
      on.setAttribute('aria-disabled', String(!canGoOn));
    },
    onStep(next) {
      listener = next;
    },
    focus: () => on.focus({ preventScroll: true }),
  };
}

function sign(text: string, words: string, onClick: () => void): HTMLButtonElement {
  const element = makeButton(text, onClick);
  element.setAttribute('aria-label', words);
  element.title = words;
  return element;
}
