import { numberedSan, sanIn } from '../../../chess/letters.ts';
import type { PlayedMove } from '../../../chess/types.ts';
import type { ChangeToWrite, LookAnswer } from '../../../contract/desk-write.ts';
import { fill } from '../../../contract/sentence.ts';
import type { ChapterWords } from '../../../contract/words.ts';
import { element, make, makeButton } from '../../element.ts';
import { focusIn } from './keep-focus.ts';
import { makeNaming } from './naming.ts';
import {
  isNothing,
  movesToWrite,
  nothingSaid,
  type Said,
  toggled,
  type Way,
  waysFor,
  withGlyph,
  wordsToWrite,
} from './said.ts';
import { makeSameChoice, sameAt } from './same-choice.ts';
import { makeSigns } from './signs.ts';
import { makeTypedHelp } from './typed-directive.ts';
import { words } from './words.ts';

/** Where the sheet stands in the chapter, and what is played from there. */
export interface SheetPlace {
  /** The place that is written to: the id of its element. */
  readonly at: string;
  /** The place in words, as under the board. */
  readonly after: string;
  readonly look: LookAnswer;
  readonly moves: readonly PlayedMove[];
  /** How many of them are on the board: what is said is said there. */
  readonly shown: number;
}

export interface SheetEvents {
  readonly onWrite: (change: ChangeToWrite) => void;
  readonly onSay: (message: string) => void;
  /** What the button that writes is to say; undefined while nothing can be written. */
  readonly onOffer: (name: string | undefined) => void;
  readonly onGo: (at: number) => void;
}

const firstClaims = 8;

/**
 * The sheet under the board on which an author writes: what is new in sentences, what it is to the line, and
 * what is said of the position on the board.
 */
export class Sheet {
  readonly element = make('div', 'write-body');
  /** What is said, by what it is said of. */
  readonly said = new Map<string, Said>();
  way: Way | undefined;
  #place: SheetPlace | undefined;
  #allClaims = false;
  readonly #page: ChapterWords;
  readonly #events: SheetEvents;
  readonly #extra: readonly HTMLElement[];

  constructor(page: ChapterWords, extra: readonly HTMLElement[], events: SheetEvents) {
    this.#page = page;
    this.#events = events;
    this.#extra = extra;
  }

  get place(): SheetPlace | undefined {
    return this.#place;
  }

  show(place: SheetPlace | undefined): void {
    if (place?.at !== this.#place?.at) this.way = undefined;
    if (this.#key(place) !== this.#key(this.#place)) this.#allClaims = false;
    this.#place = place;
    this.#draw();
  }

  /** Changes what is said of the position on the board. */
  change(how: (said: Said) => Said): void {
    const key = this.#key(this.#place);
    this.said.set(key, how(this.#saidHere));
    this.#draw();
  }

  write(): void {
    const place = this.#place;
    if (place === undefined) return;
    const { moves } = place;
    if (moves.length > 0) {
      const saidOf = (index: number) => this.said.get(keyOf(place, index + 1)) ?? nothingSaid;
      const sameOf = (index: number) => sameAt(place.look, index + 1, saidOf(index));
      const line = movesToWrite(moves, saidOf, this.#way(), sameOf);
      this.#events.onWrite({ kind: 'line', moves: line });
    } else if (isNothing(this.#saidHere)) this.#events.onSay(words.nothing);
    else this.#events.onWrite({ kind: 'words', ...wordsToWrite(this.#saidHere) });
  }

  /** Has the author look at the name that was refused, if one is given here. */
  pointToName(): void {
    const input = this.element.querySelector<HTMLInputElement>('#write-name');
    if (input === null || input.value.trim() === '') return;
    input.setAttribute('aria-invalid', 'true');
    input.setAttribute('aria-describedby', 'write-status');
    input.focus();
  }

  /** What is written is no draft any more. */
  forget(): void {
    const place = this.#place;
    if (place === undefined) return;
    for (let index = 0; index <= place.moves.length; index++) this.said.delete(keyOf(place, index));
  }

  get #saidHere(): Said {
    return this.said.get(this.#key(this.#place)) ?? nothingSaid;
  }

  #key(place: SheetPlace | undefined): string {
    return place === undefined ? '' : keyOf(place, place.shown);
  }

  #way(): Way | undefined {
    const [first] = this.#place?.moves ?? [];
    if (first === undefined || this.#place === undefined) return undefined;
    const ways = waysFor(this.#place.look, first.color);
    return this.way !== undefined && ways.includes(this.way) ? this.way : ways[0];
  }

  #draw(): void {
    const place = this.#place;
    const focused = focusIn(this.element);
    if (place === undefined) {
      this.element.replaceChildren();
      this.#events.onOffer(undefined);
    } else {
      const isNew = place.moves.length > 0;
      this.element.replaceChildren(
        this.#heading(place),
        ...(isNew ? [this.#pathsOf(place)] : []),
        ...this.#same(place),
        this.#comment(place),
        ...(isNew || place.look.line > 0 ? this.#signs(place) : []),
        this.#claims(place),
        ...this.#extra,
        this.#naming(),
      );
      this.#events.onOffer(isNew ? words.write : words.add);
    }
    focused();
  }

  #heading(place: SheetPlace): HTMLElement {
    const { look, moves, after } = place;
    const { file, line, next } = look;
    const names = next.map((san) => sanIn(this.#page.letters, san)).join(', ');
    const has = next.length === 0 ? words.goesOn : fill(words.has, { moves: names });
    const where = make(
      'p',
      'write-where',
      `${fill(words.where, { file, line: String(line) })} ${has}`,
    );
    if (moves.length === 0) {
      return make('div', '', make('p', 'write-title', fill(words.here, { after })), where);
    }
    const title = make('p', 'write-title');
    const [before = '', behind = ''] = words.fresh.split('{moves}');
    title.append(before);
    for (const [index, move] of moves.entries()) {
      const bare = index > 0 && move.color === 'black';
      const name = bare ? sanIn(this.#page.letters, move.san) : this.#name(move);
      const button = makeButton(name, () => this.#events.onGo(index + 1), 'write-move');
      if (index + 1 === place.shown) button.setAttribute('aria-current', 'true');
      button.classList.toggle(
        'write-said',
        !isNothing(this.said.get(keyOf(place, index + 1)) ?? nothingSaid),
      );
      button.dataset.keep = `move-${index}`;
      title.append(button, ' ');
    }
    title.append(behind);
    return make('div', '', title, where);
  }

  #pathsOf({ look, moves }: SheetPlace): HTMLElement {
    const [first] = moves;
    const set = element('fieldset', { class: 'write-as' });
    if (first === undefined) return set;
    set.append(make('legend', '', fill(words.as, { move: this.#name(first) })));
    for (const way of waysFor(look, first.color)) {
      const input = element('input', { type: 'radio', name: 'write-way', value: way });
      input.checked = way === this.#way();
      input.dataset.keep = `way-${way}`;
      input.addEventListener('change', () => {
        this.way = way;
        this.#draw();
      });
      set.append(make('label', '', input, ` ${words.ways[way]}`));
    }
    return set;
  }

  #same({ look, shown }: SheetPlace): HTMLElement[] {
    const meeting = look.meetings.find(({ after }) => after === shown);
    if (meeting === undefined) return [];
    const isChosen = sameAt(look, shown, this.#saidHere) !== undefined;
    return [
      makeSameChoice(meeting, isChosen, (same) => this.change((said) => ({ ...said, same }))),
    ];
  }

  #comment(place: SheetPlace): HTMLElement {
    const area = element('textarea', { id: 'write-comment', rows: '2', maxlength: '20000' });
    area.value = this.#saidHere.comment;
    area.dataset.keep = 'comment';
    const about = makeTypedHelp(area);
    area.addEventListener('input', () => {
      this.said.set(this.#key(place), { ...this.#saidHere, comment: area.value });
    });
    area.addEventListener('keydown', (event) => {
      if (event.key === 'Enter' && (event.ctrlKey || event.metaKey)) this.write();
    });
    return make(
      'div',
      'write-comment',
      element('label', { for: area.id }, this.#sayOf(place)),
      area,
      about,
    );
  }

  #signs({ look, moves }: SheetPlace): HTMLElement[] {
    const move = this.#moveHere();
    if (moves.length > 0 && move !== undefined) {
      const choose = (nag: number) =>
        this.change((said) => ({ ...said, glyphs: withGlyph(said.glyphs, nag) }));
      return [
        makeSigns(fill(words.signs, { move: this.#name(move) }), this.#saidHere.glyphs, choose),
      ];
    }
    if (moves.length > 0) return [];
    const write = (nag: number) => this.#events.onWrite({ kind: 'glyph', nag });
    return [makeSigns(fill(words.signs, { move: this.#place?.after ?? '' }), look.glyphs, write)];
  }

  #claims({ look }: SheetPlace): HTMLElement {
    const root = make('div', 'write-claims');
    if (look.claims.length === 0) return root;
    const chosen = this.#saidHere.claims;
    const list = this.#allClaims ? look.claims : look.claims.slice(0, firstClaims);
    root.append(make('p', '', words.claims));
    for (const claim of new Set([...list, ...chosen])) {
      const button = makeButton(claim, () =>
        this.change((said) => ({ ...said, claims: toggled(said.claims, claim) })),
      );
      button.setAttribute('aria-pressed', String(chosen.includes(claim)));
      button.dataset.keep = `claim-${claim}`;
      root.append(button);
    }
    if (!this.#allClaims && look.claims.length > firstClaims) {
      const all = makeButton(`${words.moreClaims} (${look.claims.length})`, () => {
        this.#allClaims = true;
        this.#draw();
      });
      all.className = 'write-more';
      root.append(all);
    }
    return root;
  }

  #naming(): HTMLElement {
    const names = this.#place?.moves.length === 0 ? (this.#place.look.names ?? []) : [];
    return makeNaming(names, this.#saidHere, (named) => {
      this.said.set(this.#key(this.#place), { ...this.#saidHere, ...named });
    });
  }

  #moveHere(): PlayedMove | undefined {
    return this.#place?.moves[this.#place.shown - 1];
  }

  #sayOf({ moves, after }: SheetPlace): string {
    const move = this.#moveHere();
    if (move !== undefined) return fill(words.say, { move: this.#name(move) });
    return moves.length > 0 ? words.sayHere : `${words.sayHere}, ${after}`;
  }

  #name(move: PlayedMove): string {
    return numberedSan(move, this.#page.letters);
  }
}

/** What is said of is a position of a line: the same move at another place is another. */
function keyOf({ at, moves }: SheetPlace, shown: number): string {
  return [at, ...moves.slice(0, shown).map(({ san }) => san)].join(' ');
}
