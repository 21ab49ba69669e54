import type { PlayedMove, Position, Square } from '../../chess/types.ts';
import type { FreePlay } from '../../contract/free-play.ts';
import { textRenewed } from '../../contract/renewed-text.ts';
import { fill } from '../../contract/sentence.ts';
import { type BoardLine, onBoard } from '../board/board-state.ts';
import { type MoveEntry, makeMoveEntry } from '../board/move-entry.ts';
import { type Content, listOf, make, makeButton } from '../element.ts';
import type { Spot } from '../spots.ts';
import { whenIdle } from '../when-idle.ts';
import { caption } from '../words.ts';
import { type BoardDrawing, drawOnBoard, squareUnder } from './draw-on-board.ts';
import { takeLineFor } from './line-to-show.ts';
import { type LineView, makeLineView } from './line-view.ts';
import type { FreeText, Gesture } from './offer.ts';
import { drawOwn } from './own-drawing.ts';
import { withDrawn } from './own-entry.ts';
import type { OwnStore } from './own-store.ts';
import { makeOwnTools, type OwnTools } from './own-tools.ts';
import { Player } from './player.ts';
import { movesIn } from './position-of.ts';
import { sayHindrance } from './say-hindrance.ts';
import { signText } from './sign-text.ts';
import { whatIsSaid } from './what-is-said.ts';

/**
 * The board of a chapter, free to play on: the reader's moves go to the text where it has them, and else make a
 * line of his own, in a panel that is plainly his.
 */
export class FreeBoard {
  readonly #text: FreeText;
  readonly #given: FreePlay;
  readonly #store: OwnStore;
  readonly #player: Player;
  readonly #line: LineView;
  readonly #tools: OwnTools;
  readonly #entry: MoveEntry;
  readonly #drawing: BoardDrawing;
  readonly #panel = make('div', 'own');
  readonly #desk: HTMLElement;
  readonly #said = make('div', 'own-said');
  /** The position that was spoken of: what is said goes with it. */
  #spokenOf: string | undefined;

  constructor(text: FreeText, given: FreePlay, store: OwnStore) {
    this.#text = text;
    this.#given = given;
    this.#store = store;
    const { board, words: page } = text;
    const { words } = given;
    this.#player = new Player(text, {
      onShow: () => this.#update(),
      onPlayed: (before, move, spot) => void this.#answer(before, move, spot),
    });
    const player = this.#player;
    this.#line = makeLineView(words, page, {
      onGo: (at) => this.#keepFocus(() => player.go(at)),
      onLeave: () => this.#leave(),
      onAgain: () => player.line && player.go(player.line.at),
    });
    this.#tools = makeOwnTools(words, page, store, {
      onDraw: (isOn) => this.#drawing.set(isOn),
      onSay: (message, offersUndo) => this.#say(message, offersUndo),
    });
    this.#entry = makeMoveEntry(page, {
      legal: () => (player.position ? movesIn(player.position, page) : []),
      onMoves: (moves) => {
        this.#entry.clear();
        board.make(moves);
      },
      onUnread: (message) => this.#say(message),
    });
    this.#drawing = drawOnBoard(board, {
      onDraw: (from, to) => this.#draw(from, to),
      onChoose: (square) => this.#say(square === undefined ? '' : fill(words.drawFrom, { square })),
    });
    this.#said.setAttribute('role', 'status');
    this.#desk = make('div', 'own-desk', make('p', '', words.help), this.#entry.element);
    this.#desk.append(this.#tools.element);
    this.#desk.append(...sharing(board));
    this.#desk.hidden = true;
    this.#panel.append(this.#line.element, this.#said, this.#tools.shown, this.#desk);
    this.#panel.setAttribute('role', 'region');
    this.#panel.setAttribute('aria-label', words.section);
    board.append(this.#panel);
    this.#listen();
    const sign = () => signText(text.spots, store.entries, words);
    store.follow(() => {
      this.#showKept();
      sign();
    });
    sign();
    board.completeWith((state) => ({
      ...player.complete(state),
      drawOver: (svg, view) => drawOwn(svg, this.#tools.entry, view),
    }));
    player.playAll(takeLineFor(location.href));
  }

  /** Does what the reader did before there was anything to do it with. */
  perform({ from, to, diagram }: Gesture): void {
    const { board, spots, shown, go } = this.#text;
    const svg = (diagram ?? board).querySelector<SVGSVGElement>('svg.board');
    if (svg === null) return;
    const [start, end] = [squareUnder(svg, from), squareUnder(svg, to)];
    if (start === undefined || end === undefined) return;
    const spot = diagram && spots.get(diagram);
    if (spot !== undefined && this.#player.isOwn) this.#player.leave();
    if (spot !== undefined && shown() !== spot) go(spot);
    if (start === end) {
      board.querySelector<HTMLElement>(`.squares [data-square="${start}"]`)?.click();
      return;
    }
    const { position } = this.#player;
    const legal = position ? movesIn(position, this.#text.words) : [];
    const moves = legal.filter((each) => each.from === start && each.to === end);
    if (moves.length > 0) board.make(moves);
  }

  openTools(isOpen = true): void {
    this.#desk.hidden = !isOpen;
    this.#text.board.classList.toggle('own-open', isOpen);
    const button = this.#text.board.querySelector('.board-own');
    button?.setAttribute('aria-expanded', String(isOpen));
    if (!isOpen) return;
    this.#keepInSight();
    this.#text.board.say(this.#given.words.ready);
  }

  /** On a phone the tools cover what the board follows: the position stays, and its move comes out from under them. */
  #keepInSight(): void {
    const { shown, go } = this.#text;
    const spot = shown();
    const keep = () => {
      if (!this.#player.isOwn && shown() === spot) go(spot);
    };
    keep();
    // The room above the text is known once the tools have their place (`reading/covered.ts`).
    new ResizeObserver((_, observer) => {
      observer.disconnect();
      whenIdle(() => whenIdle(keep));
    }).observe(this.#panel);
  }

  #listen(): void {
    const { board, article, words: page } = this.#text;
    const player = this.#player;
    const { words } = this.#given;
    onBoard(board, 'course-board-own', () => this.openTools(this.#desk.hidden === true));
    onBoard(board, 'course-board-touch', () => this.#say(''));
    // What was said of a move may be true no more.
    addEventListener(textRenewed, () => this.#say(''));
    onBoard(board, 'course-board-move', (move) => player.play(move));
    onBoard(board, 'course-board-refuse', (refusal) => {
      const { position } = player;
      if (position !== undefined) this.#say(sayHindrance(position, refusal, words, page));
    });
    // A mouse leaves the focus where it was, so that the arrow keys go on stepping through the moves.
    board.addEventListener('mousedown', (event) => {
      const { target } = event;
      if (target instanceof Element && target.closest('.squares')) event.preventDefault();
    });
    // Before those of the text, whose steps these are only where no own line is on the board.
    board.addEventListener(
      'course-board-wish',
      (event) => {
        const { detail } = event as CustomEvent<{ readonly go: string }>;
        if (player.isOwn && this.#step(detail.go)) event.stopImmediatePropagation();
      },
      { capture: true },
    );
    document.addEventListener(
      'keydown',
      (event) => {
        const { target, key } = event;
        if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
        const isWritten = target instanceof Element && target.closest(notForSteps) !== null;
        const way = { ArrowLeft: 'back', ArrowRight: 'on' }[key];
        if (!player.isOwn || isWritten || way === undefined) return;
        event.preventDefault();
        this.#step(way);
      },
      { capture: true },
    );
    // A move of the text that is on the board already is one that the text would not show again.
    article.addEventListener('click', ({ target }) => {
      const link = target instanceof Element ? target.closest('.move') : null;
      if (link !== null && link === player.base?.element) player.leave();
    });
  }

  #step(way: string): boolean {
    const { line } = this.#player;
    if (line === undefined || (way !== 'back' && way !== 'on')) return false;
    if (way === 'back') this.#player.go(line.at - 1);
    else if (line.at < line.moves.length) this.#player.go(line.at + 1);
    return true;
  }

  #leave(): void {
    const { board, words: page, shown } = this.#text;
    this.#player.leave();
    board.focusSquares();
    this.#say(fill(this.#given.words.backInText, { after: caption(shown(), page) }));
  }

  /** The moves of the line are made anew: the focus goes to the one on the board. */
  #keepFocus(act: () => void): void {
    const hadFocus = this.#panel.contains(document.activeElement);
    act();
    this.#update();
    if (!hadFocus || this.#panel.contains(document.activeElement)) return;
    const here = this.#panel.querySelector<HTMLElement>('.own-move[aria-current]');
    if (here === null) this.#text.board.focusSquares();
    else here.focus({ preventScroll: true });
  }

  #update(): void {
    const player = this.#player;
    const { words: page, shown } = this.#text;
    if (player.isOwn && player.line !== undefined && player.base !== undefined) {
      this.#line.show(player.line, caption(player.base, page));
    } else this.#line.offer(player.base === shown() ? player.line : undefined);
    if (player.position?.key !== this.#spokenOf) this.#say('');
    this.#showKept();
    const { line, base, isOwn } = player;
    const detail: BoardLine =
      isOwn && line && base
        ? { at: base.element, moves: line.moves, shown: line.at }
        : { at: shown().element, moves: [], shown: 0 };
    this.#text.board.dispatchEvent(new CustomEvent('course-board-line', { detail }));
  }

  #showKept(): void {
    const { board, shown } = this.#text;
    const player = this.#player;
    const { position } = player;
    const here = (player.isOwn ? player.base : shown()) ?? shown();
    const file = location.pathname.split('/').pop() || 'index.html';
    this.#tools.update(
      position && {
        key: position.key,
        label: player.label,
        href: `${file}#${encodeURIComponent(here.element.id)}`,
        line: player.ownMoves,
      },
    );
    const svg = board.querySelector<SVGElement>('svg.board');
    const view = svg?.dataset.view === 'black' ? 'black' : 'white';
    if (svg !== null) drawOwn(svg, this.#tools.entry, view);
  }

  #draw(from: Square, to: Square): void {
    const { words } = this.#given;
    const before = this.#tools.entry;
    this.#tools.change((entry) => withDrawn(entry, from, to));
    const isMark = from === to;
    const count = ({ marks = [], arrows = [] }: NonNullable<typeof before>) =>
      isMark ? marks.length : arrows.length;
    const drawn = (this.#tools.entry ? count(this.#tools.entry) : 0) > (before ? count(before) : 0);
    const sentence = isMark
      ? words[drawn ? 'drawnMark' : 'goneMark']
      : words[drawn ? 'drawnArrow' : 'goneArrow'];
    this.#say(fill(sentence, { square: from, from, to }), true);
  }

  async #answer(before: Position, move: PlayedMove, spot: Spot | undefined): Promise<void> {
    const { key } = move.after;
    this.#spokenOf = key;
    this.#said.replaceChildren();
    const parts = await whatIsSaid(before, move, spot, this.#given, this.#text.words);
    // By then something else may be on the board.
    if (this.#player.position?.key === key) this.#say(parts);
  }

  #say(content: Content, offersUndo = false): void {
    this.#spokenOf = this.#player.position?.key;
    const parts = [...listOf(content)].filter((part) => part !== '');
    const { words } = this.#given;
    const undo = () => {
      if (this.#store.undo()) this.#say(words.undone);
    };
    if (offersUndo) parts.push(' ', makeButton(words.undo, undo));
    this.#said.replaceChildren(...(parts.length === 0 ? [] : [make('p', '', parts)]));
  }
}

/** Where the arrow keys have another use. */
const notForSteps = 'input, textarea, select, [contenteditable], .squares, .table, pre';

/** On a phone there is no room for the button that shares the position: it stands among the tools there. */
function sharing(board: HTMLElement): HTMLElement[] {
  const share = board.parentElement?.querySelector<HTMLElement>('.share');
  if (!share) return [];
  const here = makeButton(share.textContent?.trim() ?? '', () => share.click());
  here.classList.add('own-share');
  return [here];
}
