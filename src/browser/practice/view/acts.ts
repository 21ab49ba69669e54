import { make, makeButton } from '../../element.ts';

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
  let shown: readonly Act[] = [];
  const add = (index: number) => {
    const button = makeButton('', () => shown[index]?.run());
    element.insertBefore(button, element.children[index] ?? null);
    buttons.push(button);
    return button;
  };
  return {
    element,
    show(acts, main = 0) {
      while (buttons.length > acts.length) buttons.pop()?.remove();
      shown = acts;
      for (const [index, { words }] of acts.entries()) {
        const button = buttons[index] ?? add(index);
        button.textContent = words;
        button.className = index === main ? 'act' : '';
      }
    },
  };
}
