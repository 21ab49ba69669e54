import type { ChapterWords } from '../contract/words.ts';
import type { MoveEntry } from './board/move-entry.ts';

/** Where a move is typed, and where one gives up. */
export function makeControls(entry: MoveEntry, giveUp: string, onGiveUp: () => void): HTMLElement {
  const element = document.createElement('div');
  element.className = 'exercise-controls';
  element.append(entry.element, button(giveUp, onGiveUp));
  return element;
}

type StepOfTalk = 'back' | 'on' | 'again';

/** What the exercise answers, and the lines that it shows with it. */
export interface Talk {
  readonly element: HTMLElement;
  say(message: string, lines: readonly HTMLElement[]): void;
  setSteps(back: boolean, on: boolean): void;
  onStep(listener: (step: StepOfTalk) => void): void;
  focus(): void;
}

export function talkOf(lines: readonly HTMLElement[], words: ChapterWords): Talk {
  const element = document.createElement('div');
  element.className = 'exercise-talk';
  const live = document.createElement('div');
  live.setAttribute('aria-live', 'polite');
  const verdict = document.createElement('p');
  verdict.className = 'verdict';
  live.append(verdict);
  let listener: (step: StepOfTalk) => void = () => undefined;
  const steps = document.createElement('p');
  steps.className = 'exercise-steps';
  const back = sign('←', words.back, () => listener('back'));
  const on = sign('→', words.on, () => listener('on'));
  const again = button(words.exercise.again, () => listener('again'));
  steps.append(back, on, again);
  element.append(live, steps);
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

function button(words: string, onClick: () => void): HTMLButtonElement {
  const element = document.createElement('button');
  element.type = 'button';
  element.textContent = words;
  element.addEventListener('click', onClick);
  return element;
}

function sign(text: string, words: string, onClick: () => void): HTMLButtonElement {
  const element = button(text, onClick);
  element.setAttribute('aria-label', words);
  element.title = words;
  return element;
}
