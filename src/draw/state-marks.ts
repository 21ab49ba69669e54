/**
 * The signs of a reader's state, told apart by shape, so that they hold without colour: where one is (a
 * wedge), what was right (a full disc), what was wrong (a ring with a bar), what is due (an hourglass) and
 * what is still to come (a dot). Runs in the browser too: no Node imports.
 *
 * A page has the shapes once, in its sprite; a sign is `<svg class="state state-due" aria-hidden="true">
 * <use href="#state-due"/></svg>` without the white space, beside words that say the same.
 */
export const states = ['here', 'right', 'wrong', 'due', 'rest'] as const;
export type State = (typeof states)[number];

const shapes: Readonly<Record<State, string>> = {
  here: 'M2 .6l9 5.4l-9 5.4z',
  right: 'M6 .8a5.2 5.2 0 1 1 0 10.4a5.2 5.2 0 1 1 0-10.4z',
  wrong:
    'M6 .8a5.2 5.2 0 1 1 0 10.4a5.2 5.2 0 1 1 0-10.4zM6 2.4a3.6 3.6 0 1 0 0 7.2a3.6 3.6 0 1 0 0-7.2zM3.4 5.2h5.2v1.6h-5.2z',
  due: 'M1.6 .6h8.8v1.5l-3.3 3.9l3.3 3.9v1.5h-8.8v-1.5l3.3-3.9l-3.3-3.9z',
  rest: 'M6 4.1a1.9 1.9 0 1 1 0 3.8a1.9 1.9 0 1 1 0-3.8z',
};

/** The symbols `#state-here` to `#state-rest`, as one inline `<svg>` that takes no room. */
export function stateSprite(): string {
  const symbols = states.map(
    (state) =>
      `<symbol id="state-${state}" viewBox="0 0 12 12"><path d="${shapes[state]}"/></symbol>`,
  );
  return `<svg class="board-sprite" width="0" height="0" aria-hidden="true">${symbols.join('')}</svg>`;
}

/** One sign, hidden from assistive technology: words beside it say what it means. */
export function stateMark(state: State): string {
  return `<svg class="state state-${state}" aria-hidden="true"><use href="#state-${state}"/></svg>`;
}
