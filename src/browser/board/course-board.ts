import type { Color } from '../../chess/types.ts';
import { type BoardPart, dataOf } from '../../contract/attributes.ts';
import { joinSentences } from '../../contract/sentence.ts';
import type { BoardWords } from '../../contract/words.ts';
import { drawBoardInPage } from '../../draw/page-board.ts';
import { fillDrawn } from '../drawn-markup.ts';
import { make } from '../element.ts';
import { keptText } from '../kept-text.ts';
import { describeMore } from '../words.ts';
import type { BoardEvents, BoardMove, BoardState } from './board-state.ts';
import { wordsOf } from './board-words.ts';
import { drawOn } from './draw-on.ts';
import type { Hands } from './hands.ts';
import { makePlaying, type Playing } from './playing.ts';
import { listenForSwipes } from './swipe.ts';

/** A window that a board above the text would fill, so it starts folded (`reading-board.css`). */
const low = matchMedia('(max-height: 27rem)');

/**
 * `<course-board>`: the one board of the site. Data come in by `show`, the reader's acts go out as events
 * (`BoardEvents`); it holds no moves, and no state but its orientation.
 *
 *     <course-board data-parts="caption steps turn fold choices also voice" data-words="{…}">
 *       <div class="board-stand"><svg class="board">…</svg></div>
 *     </course-board>
 *
 *     onBoard(board, 'course-board-move', (move) => board.show(after(move)));
 *     board.show({ placement, view, turn, description, legal });
 *
 * `data-parts` names what stands under the board; `set-up.ts` lets its pieces be set by hand. `data-words` may stand on anything around it.
 * Without a drawing inside it makes its own; the page has the symbols (`pieceSprite`).
 */
export class CourseBoard extends HTMLElement {
  #words: BoardWords | undefined;
  #state: BoardState | undefined;
  #playing: Playing | undefined;
  #makeHands: ((svg: Element) => Hands) | undefined;
  #hands: Hands | undefined;
  #complete: (state: BoardState) => BoardState = (state) => state;
  #turned = false;
  /** Keeps what it shows while the reader scrolls. */
  held = false;
  readonly #caption = make('a', 'board-caption');
  readonly #comment = make('p', 'board-comment');
  readonly #choices = make('p', 'board-choices');
  readonly #also = make('p', 'board-also');
  readonly #live = make('p', 'unseen');
  readonly #back = button('board-step');
  readonly #on = button('board-step');
  readonly #turn = button('board-turn');
  readonly #fold = button('board-fold');
  readonly #own = button('board-own');

  connectedCallback(): void {
    if (this.#words !== undefined) return;
    const words = wordsOf(this, 'board');
    this.#words = words;
    const parts = new Set((dataOf('board', this).parts ?? '').split(' ') as BoardPart[]);
    label(this.#back, '←', words.back);
    label(this.#on, '→', words.on);
    label(this.#turn, '⇅', words.turn);
    fillDrawn(this.#own, pencil);
    this.#own.append(make('span', '', words.own));
    this.#live.setAttribute('aria-live', 'polite');
    const steps = make('span', 'board-controls');
    if (parts.has('steps')) steps.append(this.#back, this.#on);
    if (parts.has('turn')) steps.append(this.#turn);
    if (parts.has('fold')) steps.append(this.#fold);
    if (parts.has('own')) steps.append(this.#own);
    const line = make('p', 'board-line');
    if (parts.has('caption')) line.append(this.#caption);
    if (steps.hasChildNodes()) line.append(steps);
    if (line.hasChildNodes()) this.append(line);
    if (parts.has('comment')) this.append(this.#comment);
    const ways = make('div', 'board-ways');
    if (parts.has('choices')) ways.append(this.#choices);
    if (parts.has('also')) ways.append(this.#also);
    if (ways.hasChildNodes()) this.append(ways);
    if (parts.has('voice')) this.append(this.#live);
    this.#back.addEventListener('click', () => this.#tell('course-board-wish', { go: 'back' }));
    this.#on.addEventListener('click', () => this.#tell('course-board-wish', { go: 'on' }));
    this.#own.addEventListener('click', () => this.#tell('course-board-own', undefined));
    this.#turn.addEventListener('click', () => {
      this.#turned = !this.#turned;
      this.#turn.setAttribute('aria-pressed', String(this.#turned));
      if (this.#state !== undefined) this.#draw({ ...this.#state, glide: undefined });
    });
    this.#turn.setAttribute('aria-pressed', 'false');
    if (parts.has('steps')) {
      listenForSwipes(this, '.board-stand', (go) => this.#tell('course-board-wish', { go }));
    }
    if (!parts.has('fold')) return;
    this.#fold.addEventListener('click', () => {
      const folded = !this.classList.contains('folded');
      if (!low.matches) remember('board-folded', folded ? 'yes' : 'no');
      this.#setFolded(folded);
    });
    const fitWindow = () =>
      this.#setFolded(low.matches || keptText('board-folded', () => sessionStorage) === 'yes');
    low.addEventListener('change', fitWindow);
    fitWindow();
  }

  show(told: BoardState): void {
    const state = this.#complete(told);
    this.#state = state;
    this.#caption.textContent = state.caption?.text ?? '';
    this.#caption.setAttribute('href', state.caption?.href ?? '');
    setDisabled(this.#back, !state.canGoBack);
    setDisabled(this.#on, !state.canGoOn);
    this.#comment.replaceChildren(state.comment ?? '');
    this.#showChoices(state.choices ?? [], state.turn ?? 'white');
    this.#showAlso(state.also ?? []);
    this.#draw(state);
  }

  /** Speaks to readers who do not see the board, where it has the part `voice`. */
  say(text: string): void {
    this.#live.textContent = text;
  }

  /** Makes a move given elsewhere; of several, asks for the promotion. */
  make(moves: readonly BoardMove[]): void {
    this.#playing?.make(moves);
  }

  /** From now on `complete` extends every state shown. */
  completeWith(complete: (state: BoardState) => BoardState): void {
    this.#complete = complete;
    if (this.#state !== undefined) this.show({ ...this.#state, glide: undefined });
  }

  /** Call before the first `show`: the squares are not for moves (`set-up.ts`). */
  giveTo(makeHands: (svg: Element) => Hands): void {
    this.#makeHands = makeHands;
  }

  /** Puts the focus on the squares of a board that is played on. */
  focusSquares(): void {
    this.#playing?.focus();
  }

  #draw(state: BoardState): void {
    const svg = this.querySelector('svg.board') ?? this.#makeDrawing(state);
    const view = this.#turned ? (state.view === 'white' ? 'black' : 'white') : state.view;
    drawOn(svg, state, view, state.glide);
    state.drawOver?.(svg, view);
    this.#setHands(svg, state, view);
    if (this.#makeHands !== undefined) {
      // Where pieces are set by hand the squares tell what stands on them.
      svg.setAttribute('aria-hidden', 'true');
      return;
    }
    const more = this.#words === undefined ? '' : describeMore(state, this.#words);
    const seen = `${more} ${state.description}`.trim();
    svg.removeAttribute('aria-hidden');
    svg.setAttribute('role', 'img');
    svg.setAttribute('aria-label', joinSentences(state.caption?.text, state.title, seen));
  }

  #makeDrawing(state: BoardState): Element {
    const stand = this.querySelector('.board-stand') ?? make('div', 'board-stand');
    fillDrawn(stand, drawBoardInPage({ ...state, turn: state.turn }));
    if (!stand.isConnected) this.prepend(stand);
    const svg = stand.querySelector('svg');
    if (svg === null) throw new Error('a board draws itself as svg');
    return svg;
  }

  /** Whatever acts on the squares stays as long as it is the same that does. */
  #setHands(svg: Element, state: BoardState, view: Color): void {
    const words = this.#words;
    if (state.legal === undefined && this.#playing !== undefined) {
      for (const element of this.#playing.elements) element.remove();
      this.#hands = undefined;
      this.#playing = undefined;
    }
    if (this.#hands === undefined) {
      if (this.#makeHands !== undefined) this.#hands = this.#makeHands(svg);
      else if (state.legal !== undefined && words !== undefined) {
        this.#playing = makePlaying(svg, words, {
          onTouch: () => this.#tell('course-board-touch', undefined),
          onMove: (move) => this.#tell('course-board-move', move),
          onRefuse: (refusal) => this.#tell('course-board-refuse', refusal),
        });
        this.#hands = this.#playing;
      }
      svg.after(...(this.#hands?.elements ?? []));
    }
    this.#hands?.setUp(state, view);
  }

  #showChoices(choices: readonly string[], turn: Color): void {
    const links = choices.flatMap((name, choice) => {
      const link = button('board-choice');
      link.textContent = name;
      link.addEventListener('click', () =>
        this.#tell('course-board-wish', { go: 'choice', choice }),
      );
      return [' ', link];
    });
    const lead =
      links.length === 0 ? '' : make('span', 'board-plays', this.#words?.plays[turn] ?? '');
    this.#choices.replaceChildren(lead, ...links);
  }

  #showAlso(places: NonNullable<BoardState['also']>): void {
    const parts = places.flatMap(({ text, href }, index) => {
      const link = make('a', 'board-place');
      link.textContent = text;
      link.setAttribute('href', href);
      return [index === 0 ? `${this.#words?.also} ` : ', ', link];
    });
    this.#also.replaceChildren(...parts);
  }

  #setFolded(folded: boolean): void {
    const words = this.#words;
    this.classList.toggle('folded', folded);
    this.#fold.setAttribute('aria-expanded', String(!folded));
    if (words) label(this.#fold, folded ? '▾' : '▴', folded ? words.unfold : words.fold);
    this.#tell('course-board-fold', undefined);
  }

  #tell<Name extends keyof BoardEvents>(name: Name, detail: BoardEvents[Name]): void {
    this.dispatchEvent(new CustomEvent(name, { detail, bubbles: true }));
  }
}

const pencil =
  '<svg viewBox="0 0 20 20" aria-hidden="true"><path d="M3 17l1-4L14 3l3 3L7 16zM12 5l3 3"/></svg>';

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

/** Not `disabled`, which would take the focus away. */
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
