import type { Color, PieceKind } from '../chess/types.ts';
import { pieceId } from '../draw/piece-paths.ts';
import type { ExerciseWords } from './exercise-words.ts';

/** Where a move is typed, and where one gives up. */
export function controls(
  words: ExerciseWords,
  on: { readonly onTyped: (text: string) => void; readonly onGiveUp: () => void },
): { readonly element: HTMLElement; clear(): void } {
  const element = document.createElement('div');
  element.className = 'exercise-controls';
  const form = document.createElement('form');
  const label = document.createElement('label');
  const input = document.createElement('input');
  Object.assign(input, {
    type: 'text',
    autocomplete: 'off',
    autocapitalize: 'off',
    spellcheck: false,
    size: 7,
    maxLength: 20,
  });
  input.setAttribute('enterkeyhint', 'go');
  label.append(`${words.typed} `, input);
  const play = document.createElement('button');
  play.type = 'submit';
  play.textContent = words.play;
  form.append(label, play);
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const text = input.value.trim();
    if (text === '') input.focus();
    else on.onTyped(text);
  });
  element.append(form, button(words.giveUp, on.onGiveUp));
  return {
    element,
    clear: () => {
      input.value = '';
    },
  };
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

export function talkOf(lines: readonly HTMLElement[], words: ExerciseWords): Talk {
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
  const again = button(words.again, () => listener('again'));
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

/** Asks what a pawn becomes. */
export function askPromotion(
  words: ExerciseWords,
  color: Color,
): {
  readonly element: HTMLElement;
  ask(onChosen: (kind: PieceKind) => void): void;
  clear(): void;
} {
  const element = document.createElement('div');
  element.className = 'promotion';
  element.setAttribute('role', 'group');
  element.setAttribute('aria-label', words.promote);
  element.hidden = true;
  const clear = () => {
    element.hidden = true;
    element.replaceChildren();
  };
  element.addEventListener('keydown', (event) => {
    if (event.key === 'Escape') clear();
  });
  return {
    element,
    clear,
    ask(onChosen) {
      const kinds = ['queen', 'rook', 'bishop', 'knight'] as const;
      const choices = kinds.map((kind) => {
        const choice = sign('', words.pieces[kind], () => {
          clear();
          onChosen(kind);
        });
        choice.innerHTML = `<svg viewBox="0 0 10 10" aria-hidden="true"><use href="#${pieceId({ color, kind })}"/></svg>`;
        return choice;
      });
      element.replaceChildren(`${words.promote} `, ...choices);
      element.hidden = false;
      choices[0]?.focus();
    },
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
