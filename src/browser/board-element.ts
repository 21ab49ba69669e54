import type { Color, Square } from '../chess/types.ts';
import type { BoardPicture } from '../draw/picture.ts';
import { drawOn } from './draw-on.ts';
import type { Words } from './words.ts';

/** What the board is told to show. */
export interface BoardState extends BoardPicture {
  readonly view: Color;
  /** What stands under the board, and where in the page it leads. */
  readonly caption: { readonly text: string; readonly href: string };
  /** For readers who do not see the board: its pieces in words. */
  readonly description: string;
  /** The moves from here where lines part; fewer than two are no choice. */
  readonly choices: readonly string[];
  readonly canGoBack: boolean;
  readonly canGoOn: boolean;
  /** A piece glides from the first square to the second: a step of one move, either way. */
  readonly glide?: { readonly from: Square; readonly to: Square } | undefined;
}

/** What a reader asks of the board; `choice` counts from 0. */
export type BoardWish =
  | { readonly go: 'back' | 'on' }
  | { readonly go: 'choice'; readonly choice: number };

export const wishEvent = 'course-board-wish';

/**
 * `<course-board>`: shows the position it is given and tells the page, by events that carry a
 * `BoardWish`, what the reader asks for. It holds no moves; only its orientation is its own.
 */
export class CourseBoard extends HTMLElement {
  #words: Words | undefined;
  #state: BoardState | undefined;
  #turned = false;
  readonly #caption = make('a', 'board-caption');
  readonly #choices = make('p', 'board-choices');
  readonly #live = make('p', 'unseen');
  readonly #back = button('board-step');
  readonly #on = button('board-step');
  readonly #turn = button('board-turn');
  readonly #fold = button('board-fold');

  connectedCallback(): void {
    if (this.#words !== undefined) return;
    const words = JSON.parse(this.dataset.words ?? '{}') as Words;
    this.#words = words;
    label(this.#back, '←', words.back);
    label(this.#on, '→', words.on);
    label(this.#turn, '⇅', words.turn);
    this.#live.setAttribute('aria-live', 'polite');
    const steps = make('span', 'board-controls');
    steps.append(this.#back, this.#on, this.#turn, this.#fold);
    const line = make('p', 'board-line');
    line.append(this.#caption, steps);
    this.append(line, this.#choices, this.#live);
    this.#back.addEventListener('click', () => this.#wish({ go: 'back' }));
    this.#on.addEventListener('click', () => this.#wish({ go: 'on' }));
    this.#turn.addEventListener('click', () => {
      this.#turned = !this.#turned;
      this.#turn.setAttribute('aria-pressed', String(this.#turned));
      this.#draw();
    });
    this.#turn.setAttribute('aria-pressed', 'false');
    this.#fold.addEventListener('click', () => this.#setFolded(!this.classList.contains('folded')));
    this.#setFolded(recall('board-folded') === 'yes');
  }

  show(state: BoardState): void {
    this.#state = state;
    this.#caption.textContent = state.caption.text;
    this.#caption.setAttribute('href', state.caption.href);
    setDisabled(this.#back, !state.canGoBack);
    setDisabled(this.#on, !state.canGoOn);
    this.#showChoices(state.choices);
    this.#draw();
  }

  /** Speaks to readers who do not see the board. */
  say(text: string): void {
    this.#live.textContent = text;
  }

  #draw(): void {
    const svg = this.querySelector('svg.board');
    const state = this.#state;
    if (svg === null || state === undefined) return;
    const view = this.#turned ? (state.view === 'white' ? 'black' : 'white') : state.view;
    svg.setAttribute('role', 'img');
    svg.setAttribute('aria-label', `${state.caption.text}. ${state.description}`);
    drawOn(svg, state, view, state.glide);
  }

  #showChoices(choices: readonly string[]): void {
    const words = this.#words;
    if (words === undefined || choices.length < 2) {
      this.#choices.replaceChildren();
      return;
    }
    const parts = choices.flatMap((name, choice) => {
      const link = button('board-choice');
      link.textContent = name;
      link.addEventListener('click', () => this.#wish({ go: 'choice', choice }));
      const before = choice === 0 ? words.next : choice === 1 ? ` ${words.or}` : ',';
      return [`${before} `, link];
    });
    this.#choices.replaceChildren(...parts);
  }

  #setFolded(folded: boolean): void {
    const words = this.#words;
    this.classList.toggle('folded', folded);
    this.#fold.setAttribute('aria-expanded', String(!folded));
    if (words) label(this.#fold, folded ? '▾' : '▴', folded ? words.unfold : words.fold);
    remember('board-folded', folded ? 'yes' : 'no');
    this.dispatchEvent(new CustomEvent('course-board-fold', { bubbles: true }));
  }

  #wish(detail: BoardWish): void {
    this.dispatchEvent(new CustomEvent<BoardWish>(wishEvent, { detail, bubbles: true }));
  }
}

function make<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  className: string,
): HTMLElementTagNameMap[Name] {
  const element = document.createElement(name);
  element.className = className;
  return element;
}

function button(className: string): HTMLButtonElement {
  const element = make('button', className);
  element.type = 'button';
  return element;
}

function label(element: HTMLElement, sign: string, words: string): void {
  element.textContent = sign;
  element.setAttribute('aria-label', words);
  element.title = words;
}

/** Not `disabled`: a button that loses the focus under the reader's finger is a trap. */
function setDisabled(element: HTMLElement, disabled: boolean): void {
  element.setAttribute('aria-disabled', String(disabled));
}

/** Kept for the visit; a browser that refuses storage only forgets. */
function remember(key: string, value: string): void {
  try {
    sessionStorage.setItem(key, value);
  } catch {
    // Storage is a convenience.
  }
}

function recall(key: string): string | null {
  try {
    return sessionStorage.getItem(key);
  } catch {
    return null;
  }
}
