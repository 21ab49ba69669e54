import { make } from '../../element.ts';

/** What a reader may do now. */
export interface Act {
  readonly words: string;
  readonly run: () => void;
}

/** Buttons in a row, before whatever else is put into it. */
export interface Acts {
  readonly element: HTMLElement;
  /** @param main the index of what most readers want; -1 for none. */
  show(acts: readonly Act[], main?: number): void;
}

/**
 * What is kept may be read again while a button is pressed. One that was replaced in between would lose the click, one
 * that moved would leave it to another: each stays the same element, and so in its place.
 */
export function makeActs(): Acts {
  const element = make('p', 'practice-acts');
  const buttons: HTMLButtonElement[] = [];
  return {
    element,
    show(acts, main = 0) {
      while (buttons.length > acts.length) buttons.pop()?.remove();
      for (const [index, { words, run }] of acts.entries()) {
        let button = buttons[index];
        if (button === undefined) {
          button = make('button', '');
          button.type = 'button';
          const last = buttons.at(-1);
          if (last === undefined) element.prepend(button);
          else last.after(button);
          buttons.push(button);
        }
        button.textContent = words;
        button.className = index === main ? 'act' : '';
        button.onclick = run;
      }
    },
  };
}
