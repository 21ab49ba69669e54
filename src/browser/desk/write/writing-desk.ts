import { dataOf } from '../../../contract/attributes.ts';
import type {
  ChangeToWrite,
  LookAnswer,
  WriteAnswer,
  WriteHistory,
} from '../../../contract/desk-write.ts';
import { positionAddress } from '../../../contract/position-address.ts';
import { textRenewed } from '../../../contract/renewed-text.ts';
import { fill } from '../../../contract/sentence.ts';
import { type BoardLine, onBoard } from '../../board/board-state.ts';
import { wordsOf } from '../../board/board-words.ts';
import type { CourseBoard } from '../../board/course-board.ts';
import { make, makeButton } from '../../element.ts';
import { keepLineFor } from '../../free/line-to-show.ts';
import { askServer, Refused } from '../ask-server.ts';
import { type DrawMode, makeDrawMode } from './draw-mode.ts';
import { keep, takeKept } from './keep-said.ts';
import { type Said, toggled } from './said.ts';
import { Sheet, type SheetPlace } from './sheet.ts';
import { SheetFoot } from './sheet-foot.ts';
import { words } from './words.ts';

export interface WrittenPage {
  /** `DeskState.version` that it shows now. */
  readonly version: number;
  readonly chapter: string;
}

/** In milliseconds: a course that takes longer to be read again is not waited for. */
const longestWait = 15_000;

/** What stands below a chapter's board in `dev`: the sheet, what became of it, and what can be taken back. */
export class WritingDesk {
  readonly #page: WrittenPage;
  readonly #board: CourseBoard;
  readonly #sheet: Sheet;
  readonly #draw: DrawMode;
  readonly #foot: SheetFoot;
  readonly #acts = make('p', 'write-ways');
  readonly #open: HTMLButtonElement;
  #line: BoardLine | undefined;
  /** Counts the questions to the server: only the answer to the last one is shown. */
  #asked = 0;
  /** What the page tells when it is loaded anew. */
  #message: string | undefined;
  #history: WriteHistory = {};
  /** Where the board is to stand when the text has been renewed: an id that it has then. */
  #goal: string | undefined;
  #current: Promise<void> = Promise.resolve();
  #isCurrent: () => void = () => {};
  /** How often the text has been renewed. */
  #renewals = 0;
  /** The line on the board stands in the chapter by now. */
  #isWritten = false;

  constructor(page: WrittenPage, board: CourseBoard) {
    this.#page = page;
    this.#board = board;
    this.#draw = makeDrawMode(board, {
      onDraw: (draw, item) => {
        if (this.#sheet.place?.moves.length === 0) void this.#write({ kind: 'draw', draw, item });
        else
          this.#sheet.change((said) => ({
            ...said,
            drawn: toggled(said.drawn, { kind: draw, item }),
          }));
      },
      onSay: (message) => this.#say(message),
    });
    this.#foot = new SheetFoot(() => this.#sheet.write());
    this.#sheet = new Sheet(wordsOf(board, 'chapter'), [this.#draw.element], {
      onWrite: (change) => void this.#write(change),
      onSay: (message) => this.#say(message),
      onOffer: (name) => this.#foot.offer(name),
      onGo: (at) => board.querySelectorAll<HTMLElement>('.own-move')[at - 1]?.click(),
    });
    this.#open = makeButton(words.open, () => this.#setOpen(!this.#isOpen), 'write-open');
    const root = make(
      'section',
      'write-sheet',
      this.#open,
      this.#sheet.element,
      this.#foot.element,
      this.#acts,
    );
    root.setAttribute('aria-label', words.section);
    board.after(root);
    this.#takeUp();
    onBoard(board, 'course-board-line', (line) => this.#follow(line));
    addEventListener('pagehide', () => this.#leave());
    addEventListener(textRenewed, () => this.#renew());
  }

  get #isOpen(): boolean {
    return this.#sheet.element.hidden !== true;
  }

  /** What was said before the page was loaded anew. */
  #takeUp(): void {
    const { said, message, isOpen = false, history = {} } = takeKept<Said>();
    for (const [key, each] of said) this.#sheet.said.set(key, each);
    this.#message = message;
    this.#say(message ?? '');
    this.#showHistory(history);
    this.#setOpen(isOpen);
  }

  #leave(): void {
    if (this.#goal !== undefined) {
      const { pathname } = location;
      history.replaceState(
        { shown: this.#goal },
        '',
        `${pathname}#${encodeURIComponent(this.#goal)}`,
      );
    }
    const moves = this.#line?.moves.map(({ san }) => san) ?? [];
    if (!this.#isWritten && moves.length > 0) keepLineFor(location.href, moves);
    keep<Said>({
      said: [...this.#sheet.said],
      message: this.#message,
      isOpen: this.#isOpen,
      history: this.#history,
    });
  }

  #follow(line: BoardLine): void {
    if (isSame(line, this.#line)) return;
    this.#line = line;
    const isNew = line.moves.length > 0;
    if (isNew) {
      this.#message = undefined;
      this.#isWritten = false;
    }
    if (isNew && !this.#isOpen) this.#setOpen(true);
    else if (this.#isOpen) void this.#look(line);
  }

  /** The text has been changed in place, by what was written or by somebody else. */
  #renew(): void {
    this.#renewals++;
    const goal = this.#goal;
    this.#goal = undefined;
    // First all that reads the text reads it again.
    queueMicrotask(() => {
      if (goal !== undefined) goTo(goal);
      if (this.#isOpen && this.#line !== undefined) void this.#look(this.#line);
      else this.#isCurrent();
    });
  }

  /** What is written next waits until the page shows what was written last. */
  #awaitRenewal(): void {
    this.#current = new Promise((resolve) => {
      this.#isCurrent = resolve;
      setTimeout(resolve, longestWait);
    });
  }

  #setOpen(isOpen: boolean): void {
    this.#sheet.element.hidden = !isOpen;
    this.#open.textContent = isOpen ? words.close : words.open;
    this.#open.setAttribute('aria-expanded', String(isOpen));
    if (!isOpen) this.#draw.end();
    else if (this.#line !== undefined) void this.#look(this.#line);
  }

  #say(message: string): void {
    this.#foot.say(message);
  }

  async #look(line: BoardLine): Promise<void> {
    const asked = ++this.#asked;
    const at = idOfPlace(line.at);
    const played = line.moves.map(({ san }) => san);
    try {
      const asks = { ...this.#page, at, moves: played, shown: line.shown };
      const look = (await askServer('look', asks)) as LookAnswer;
      if (asked !== this.#asked) return;
      const { moves, shown } = line;
      this.#sheet.show({ at, after: captionOf(this.#board), look, moves, shown });
      this.#showHistory(look.history);
      this.#isCurrent();
    } catch (error) {
      if (asked !== this.#asked) return;
      // A page that is behind the course is renewed in a moment, and looks again then.
      if (isBehind(error)) return;
      this.#sheet.show(undefined);
      this.#foot.refuse(reasonOf(error));
    }
  }

  #showHistory(now: WriteHistory): void {
    this.#history = now;
    const { undo, redo } = now;
    const button = (route: 'undo' | 'redo', name: string, sentence: string) =>
      makeButton(name, () => void this.#act(route, {}, sentence));
    this.#acts.replaceChildren(
      ...(undo === undefined
        ? []
        : [button('undo', fill(words.undo, { what: undo }), words.undone)]),
      ...(redo === undefined
        ? []
        : [button('redo', fill(words.redo, { what: redo }), words.redone)]),
    );
  }

  async #write(change: ChangeToWrite): Promise<void> {
    await this.#current;
    const { place } = this.#sheet;
    if (place === undefined) return;
    const { at, look } = place;
    const asked = { ...this.#page, at, text: look.text, change, to: idAfter(change, place) };
    await this.#act('write', asked, words.written, () => {
      if (change.kind === 'line' || change.kind === 'words') this.#sheet.forget();
      this.#isWritten = change.kind === 'line';
      // What is written is read in the text.
      if (this.#isWritten) this.#setOpen(false);
    });
  }

  /** @param sentence says what was done, with its file and line. */
  async #act(route: string, asked: unknown, sentence: string, onDone = () => {}): Promise<void> {
    const { moves = [] } = this.#line ?? {};
    const before = this.#renewals;
    try {
      const answer = (await askServer(route, asked)) as WriteAnswer;
      const { file, line, at, history: now } = answer;
      onDone();
      if (this.#renewals === before) this.#awaitRenewal();
      // Who takes something back in the middle of another line goes on with that.
      if (route === 'write' || moves.length === 0) {
        if (this.#renewals === before) this.#goal = at;
        else goTo(at);
      }
      this.#message = fill(sentence, { file, line: String(line) });
      this.#say(this.#message);
      this.#showHistory(now);
    } catch (error) {
      this.#foot.refuse(reasonOf(error));
      if (error instanceof Refused && error.about === 'name') this.#sheet.pointToName();
    }
  }
}

/** Has the board show a place of the text, as by a step through the browser's history. */
function goTo(id: string): void {
  const state = { shown: id };
  history.replaceState(state, '', `#${encodeURIComponent(id)}`);
  dispatchEvent(new PopStateEvent('popstate', { state }));
  document.getElementById(id)?.scrollIntoView({ block: 'nearest' });
}

/** The id of what was written, once the page is there again: where its board is to stand. */
function idAfter(change: ChangeToWrite, { moves, look }: SheetPlace): string | undefined {
  // A position is known by the first of its names.
  if (change.kind === 'words') return look.names.length === 0 ? change.name : undefined;
  const last = moves.at(-1);
  if (change.kind !== 'line' || last === undefined) return undefined;
  return change.moves.at(-1)?.name ?? positionAddress(last.after.key);
}

function isSame(one: BoardLine, other: BoardLine | undefined): boolean {
  return (
    one.at === other?.at &&
    one.shown === other.shown &&
    one.moves.length === other.moves.length &&
    one.moves.every(({ after }, index) => after.key === other.moves[index]?.after.key)
  );
}

/** A diagram is no place in the moves; the move that leads to its position is. */
function idOfPlace(at: HTMLElement): string {
  return dataOf('diagram', at).at || at.id;
}

function captionOf(board: CourseBoard): string {
  return board.querySelector('.board-caption')?.textContent ?? '';
}

function isBehind(error: unknown): boolean {
  return error instanceof Refused && error.status === 409;
}

function reasonOf(error: unknown): string {
  if (error instanceof Refused) return error.message;
  throw error;
}
