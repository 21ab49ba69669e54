import { boardParts } from '../../contract/attributes.ts';
import { pieceSprite } from '../../draw/page-board.ts';
import { onBoard } from '../board/board-state.ts';
import { CourseBoard } from '../board/course-board.ts';
import { fillDrawn } from '../drawn-markup.ts';
import { make } from '../element.ts';
import { describe } from '../words.ts';
import { embedCss } from './embed-css.ts';
import { embedLook, embedWords } from './embed-words.ts';
import { type EmbeddedLine, readLine } from './read-line.ts';

/** Tells which position of its line a board shows, by how many moves lead to it. */
export const lineShown = 'course-line-shown';

/** The board within the shadow; pages of the course itself call theirs `course-board`. */
class Drawing extends CourseBoard {}

/**
 * `<course-board>` for pages outside the course: a line of moves to step through. All it shows is
 * in its attributes (see `readLine`), so it asks nobody for anything; `href` leads into the course.
 * What stands inside it is shown where no script runs, and where the page's policy lets none draw.
 *
 *     <course-board fen="…" moves="e2e4 e7e5" sans="e4 e5" at="1" href="https://…/one.html#open">
 *       <a href="…"><img src="…" alt="…"></a>
 *     </course-board>
 */
export class EmbeddedBoard extends HTMLElement {
  #at = 0;
  #again: (() => void) | undefined;

  connectedCallback(): void {
    if (this.shadowRoot !== null) return;
    const card = make('div', 'card');
    try {
      fillDrawn(card, pieceSprite());
    } catch {
      // The page takes no drawings from scripts: the picture that stands inside stays.
      return;
    }
    const root = this.attachShadow({ mode: 'open' });
    if (!customElements.get('course-board-drawing')) {
      customElements.define('course-board-drawing', Drawing);
    }
    addStyle(root);
    const read = () => readLine((name) => this.getAttribute(name));
    let line = read();
    const drawing = new Drawing();
    drawing.dataset.words = JSON.stringify(embedWords);
    const steps = boardParts('caption', 'steps', 'turn', 'voice');
    drawing.dataset.parts = (line.positions.length > 1 ? steps : boardParts('turn')).parts;
    const turn = make('span', 'turn-words');
    const foot = make('p', 'foot');
    foot.append(turn, ...this.#link());
    card.append(drawing, foot);
    root.append(card);

    const show = (at: number) => {
      const position = line.positions[at];
      if (position === undefined) return;
      const before = this.#at;
      this.#at = at;
      turn.textContent = embedWords.toMove[position.turn];
      drawing.show({ ...stateOf(line, at), glide: glideOf(line, before, at) });
      // The way into the course stands below: the words over it lead nowhere.
      drawing.querySelector('.board-caption')?.removeAttribute('href');
      if (before !== at) drawing.say(captionOf(line, at));
      this.dispatchEvent(new CustomEvent(lineShown, { detail: at, bubbles: true }));
    };
    onBoard(drawing, 'course-board-wish', (wish) => {
      if (wish.go === 'back') show(this.#at - 1);
      if (wish.go === 'on') show(this.#at + 1);
    });
    root.addEventListener('keydown', (event) => {
      const { key, altKey, ctrlKey, metaKey } = event as KeyboardEvent;
      const step = { ArrowLeft: -1, ArrowRight: 1 }[key];
      if (step === undefined || altKey || ctrlKey || metaKey) return;
      event.preventDefault();
      show(this.#at + step);
    });
    this.#at = line.at;
    show(line.at);
    this.#again = () => {
      line = read();
      this.#at = -1;
      show(line.at);
    };
  }

  /** Shows another line from the same start, or another position of the same. */
  follow(line: Readonly<Record<'moves' | 'sans' | 'at', string>>): void {
    for (const [name, value] of Object.entries(line)) this.setAttribute(name, value);
    this.#again?.();
  }

  #link(): HTMLAnchorElement[] {
    const href = this.getAttribute('href');
    if (href === null || !/^(?:https?:|\.{0,2}\/|[^:]*$)/i.test(href)) return [];
    const link = make('a', 'into-course');
    link.href = href;
    link.target = '_top';
    link.textContent = embedWords.open;
    return [link];
  }
}

function stateOf(line: EmbeddedLine, at: number) {
  const { positions, view, marks, arrows } = line;
  const { placement = '8/8/8/8/8/8/8/8', turn = 'white', move } = positions[at] ?? {};
  const isFirst = at === line.at;
  return {
    placement,
    turn,
    view,
    marks: isFirst ? marks : [],
    arrows: isFirst ? arrows : [],
    lastMove: move,
    description: describe(placement, embedWords),
    caption: { text: captionOf(line, at), href: '' },
    canGoBack: at > 0,
    canGoOn: at < positions.length - 1,
  };
}

function captionOf({ positions }: EmbeddedLine, at: number): string {
  const name = positions[at]?.move?.name;
  return name === undefined ? embedWords.start : `${embedWords.after} ${name}`;
}

/** The piece that moved glides, forwards or back. */
function glideOf({ positions }: EmbeddedLine, before: number, at: number) {
  if (at === before + 1) return positions[at]?.move;
  const undone = at === before - 1 ? positions[before]?.move : undefined;
  return undone && { from: undone.to, to: undone.from };
}

/** A sheet that scripts make is let in where a policy forbids inline styles; older browsers lack it. */
function addStyle(root: ShadowRoot): void {
  try {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(embedCss + embedLook);
    root.adoptedStyleSheets = [sheet];
  } catch {
    const style = document.createElement('style');
    style.textContent = embedCss + embedLook;
    root.append(style);
  }
}
