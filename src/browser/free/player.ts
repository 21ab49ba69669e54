import { listMoves, playSan } from '../../chess/rules.ts';
import type { PlayedMove, Position } from '../../chess/types.ts';
import type { BoardMove, BoardState } from '../board/board-state.ts';
import type { Glide } from '../board/draw-on.ts';
import type { Spot } from '../spots.ts';
import { caption, describe } from '../words.ts';
import type { FreeText } from './offer.ts';
import { goTo, lastMoveIn, type OwnLine, ownLineFrom, playIn, positionIn } from './own-line.ts';
import { childWith, movesIn, positionOf } from './position-of.ts';
import { nameOf } from './say-answer.ts';

export interface PlayerEvents {
  readonly onShow: () => void;
  /** A move was played; `spot` where the text goes on with it. */
  readonly onPlayed: (before: Position, move: PlayedMove, spot: Spot | undefined) => void;
}

/**
 * What is on a chapter's board: a position of the text or of the reader's own line. The board asks it to complete every
 * state that it shows.
 */
export class Player {
  /** The line on the board, or the last one. */
  line: OwnLine | undefined;
  /** Where that leaves the text. */
  base: Spot | undefined;
  isOwn = false;
  readonly #text: FreeText;
  readonly #events: PlayerEvents;
  /** What the text last showed on the board. */
  #told: BoardState | undefined;
  #isShowing = false;

  constructor(text: FreeText, events: PlayerEvents) {
    this.#text = text;
    this.#events = events;
  }

  get position(): Position | undefined {
    return this.isOwn && this.line !== undefined
      ? positionIn(this.line)
      : positionOf(this.#text.shown(), this.#text.spots);
  }

  /** Where it is, in words: `after 9.Bg5`. */
  get label(): string {
    const { words } = this.#text;
    const last = this.isOwn && this.line !== undefined ? lastMoveIn(this.line) : undefined;
    if (last === undefined) return caption(this.#text.shown(), words);
    return `${words.after} ${nameOf(last, words)}`;
  }

  /** Adds the legal moves to a state; leaves the own line unless the state is from here. */
  complete(state: BoardState): BoardState {
    if (!this.#isShowing) {
      this.#told = state;
      this.#setOwn(false);
    }
    queueMicrotask(this.#events.onShow);
    const { position } = this;
    if (position === undefined) return state;
    const turn = position.key.split(' ')[1] === 'b' ? 'black' : 'white';
    return { ...state, turn, legal: movesIn(position, this.#text.words) };
  }

  /** The reader's moves that led to the position on the board; absent in the text. */
  get ownMoves(): readonly string[] | undefined {
    if (!this.isOwn || this.line === undefined) return undefined;
    return this.line.moves.slice(0, this.line.at).map(({ san }) => san);
  }

  /** Takes up a line of the reader's own, in SAN, as far as it can be played from the text on the board. */
  playAll(sans: readonly string[]): void {
    const start = positionOf(this.#text.shown(), this.#text.spots);
    if (start === undefined || sans.length === 0) return;
    let line = ownLineFrom(start);
    for (const san of sans) {
      const move = playSan(positionIn(line), san);
      if (move === undefined) break;
      line = playIn(line, move);
    }
    if (line.at === 0) return;
    this.base = this.#text.shown();
    this.line = line;
    this.#showLine(undefined);
  }

  play({ from, to, promotion }: BoardMove): void {
    const { position } = this;
    if (position === undefined) return;
    const named = listMoves(position).find(
      (each) => each.from === from && each.to === to && each.promotion === promotion,
    );
    const move = named && playSan(position, named.san);
    if (move === undefined) return;
    const line = this.isOwn ? this.line : undefined;
    const isAtText = line === undefined || line.at === 0;
    const spot = isAtText ? childWith(this.#text.shown(), this.#text.spots, move.after) : undefined;
    if (spot !== undefined) this.#text.go(spot);
    else {
      if (line === undefined) this.base = this.#text.shown();
      this.line = playIn(line ?? ownLineFrom(position), move);
      this.#showLine({ from, to });
      this.#say(move);
    }
    this.#events.onPlayed(position, move, spot);
  }

  /** Shows a number of moves of the own line; with none, leaves it. */
  go(at: number): void {
    const { line } = this;
    if (line === undefined) return;
    const next = goTo(line, at);
    if (at < 1) {
      this.leave();
      return;
    }
    if (next.at === line.at && this.isOwn) return;
    const back = next.at === line.at - 1 ? lastMoveIn(line) : undefined;
    const on = next.at === line.at + 1 ? lastMoveIn(next) : undefined;
    this.line = next;
    this.#showLine(on ?? (back && { from: back.to, to: back.from }));
    const last = lastMoveIn(next);
    if (last !== undefined) this.#say(last);
  }

  #say(move: PlayedMove): void {
    const { words, board } = this.#text;
    board.say(nameOf(move, words));
  }

  leave(): void {
    if (!this.isOwn || this.#told === undefined) return;
    this.#text.board.show({ ...this.#told, glide: undefined });
  }

  #setOwn(isOwn: boolean): void {
    this.isOwn = isOwn;
    this.#text.board.held = isOwn;
    this.#text.board.classList.toggle('own-way', isOwn);
  }

  #showLine(glide: Glide | undefined): void {
    const { line, base } = this;
    if (line === undefined || base === undefined) return;
    this.#setOwn(true);
    const position = positionIn(line);
    const [placement = ''] = position.key.split(' ');
    const { board, words } = this.#text;
    this.#isShowing = true;
    board.show({
      key: position.key,
      placement,
      view: base.view,
      lastMove: lastMoveIn(line) ?? base.move,
      caption: { text: this.label, href: `#${encodeURIComponent(base.element.id)}` },
      description: describe(placement, words),
      canGoBack: true,
      canGoOn: line.at < line.moves.length,
      glide,
    });
    this.#isShowing = false;
  }
}
