import { fill } from '../../contract/sentence.ts';
import type { BoardWords } from '../../contract/words.ts';
import type { BoardMove } from './board-state.ts';
import { findTyped } from './typed-move.ts';

export interface MoveEntry {
  readonly element: HTMLFormElement;
  clear(): void;
}

/**
 * `onMoves` gets the one move that was typed, or several that differ by what a pawn becomes;
 * `onUnread` gets a sentence that says why the text is no move here.
 */
export function makeMoveEntry(
  words: BoardWords,
  {
    legal,
    onMoves,
    onUnread,
    label: text = words.typed,
    example,
  }: {
    readonly legal: () => readonly BoardMove[];
    readonly onMoves: (moves: readonly BoardMove[]) => void;
    readonly onUnread: (message: string) => void;
    /** What stands beside the field, and in it while it is empty. */
    readonly label?: string;
    readonly example?: string;
  },
): MoveEntry {
  const element = document.createElement('form');
  element.className = 'move-entry';
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
  if (example !== undefined) input.placeholder = example;
  label.append(`${text} `, input);
  const play = document.createElement('button');
  play.type = 'submit';
  play.textContent = words.play;
  element.append(label, play);
  element.addEventListener('submit', (event) => {
    event.preventDefault();
    const typed = input.value.trim();
    if (typed === '') return input.focus();
    const found = findTyped(typed, legal(), words.letters);
    const [first] = found ?? [];
    if (found === undefined) {
      onUnread(fill(words.unreadable, { text: typed, example: `${words.letters.knight}f3` }));
    } else if (first === undefined) {
      onUnread(fill(words.illegal, { move: typed }));
    } else if (found.some(({ from }) => from !== first.from)) {
      const moves = found.map(({ san }) => san).join(` ${words.or} `);
      onUnread(fill(words.unclear, { text: typed, moves }));
    } else onMoves(found);
  });
  return {
    element,
    clear: () => {
      input.value = '';
    },
  };
}
