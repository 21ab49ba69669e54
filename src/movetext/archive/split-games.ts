import {
  blank,
  brace,
  bracket,
  close,
  closingBrace,
  closingBracket,
  cr,
  hasInk,
  isBlank,
  isMoveOne,
  isWordStart,
  lf,
  open,
  ordinary,
  percent,
  quote,
  resultAt,
  roles,
  semicolon,
  tagAt,
  tagNameAt,
  tagValueEnd,
} from './archive-bytes.ts';

/** The bytes of one game of a PGN file. Cut short where it is longer than any game can be. */
export interface GameBytes {
  readonly bytes: Uint8Array;
  readonly tooLong: boolean;
  /** The line of the file that it begins in, from 1. */
  readonly line: number;
  /** Where it begins and ends in the file, in bytes. */
  readonly start: number;
  readonly end: number;
}

/** A game of a thousand moves with a comment at each is far shorter: what is longer is no game. */
const defaultLongest = 4 * 1024 * 1024;
/** So much of what is longer is given out: enough to name it. */
const beginning = 16_384;

interface State {
  /** Whether movetext has come, so that a tag begins another game. */
  started: boolean;
  inBrace: boolean;
  depth: number;
  /** Whether the result of the game has come. */
  result: boolean;
  readonly tags: Set<string>;
}

function freshState(): State {
  return { started: false, inBrace: false, depth: 0, result: false, tags: new Set() };
}

/**
 * Cuts a PGN file into its games as it comes, in pieces of any size: the one place that says where
 * games begin. It works on bytes: every sign that counts is ASCII, so each game can have an encoding
 * of its own. A game begins at a line with a tag after moves, or, where games have no tags, after a
 * result at a line with move number 1 or with a comment that a blank line parts from it. Brackets
 * within a comment are none of these, unless the comment was left open: then a tag after a blank line
 * ends it.
 */
export class GameSplitter {
  readonly #longestGame: number;
  /** What has come of the game that is being read. */
  #buffer: Uint8Array = new Uint8Array(0);
  #length = 0;
  /** Where the buffer begins in the file. */
  #base = 0;
  /** Where the game and the next line in it begin in the buffer. */
  #start = 0;
  #at = 0;
  /** How far the end of that line has been looked for. */
  #seen = 0;
  /** The lines of the file that the line at `#at` and the game are in. */
  #line = 1;
  #firstLine = 1;
  #games: GameBytes[] = [];
  #state = freshState();
  #blankBefore = true;
  #skipping = false;
  /** A line that is a bracket and a name, and may begin a tag that goes on in the next. */
  #opened: { at: number; readonly line: number; readonly name: string } | undefined;

  constructor(longestGame = defaultLongest) {
    this.#longestGame = longestGame;
  }

  /**
   * The games that end within the bytes given so far. They lie in memory that the next call uses again,
   * so they are read before it.
   */
  push(chunk: Uint8Array): GameBytes[] {
    this.#append(chunk);
    this.#games = [];
    this.#readLines(false);
    if (this.#length - this.#start > this.#longestGame) this.#cutLong();
    return this.#games;
  }

  /** The rest. */
  end(): GameBytes[] {
    this.#games = [];
    this.#readLines(true);
    this.#cut(this.#length);
    return this.#games;
  }

  /** Puts a chunk behind what is left of the one before. */
  #append(chunk: Uint8Array): void {
    const rest = this.#length - this.#start;
    const needed = rest + chunk.length;
    if (needed > this.#buffer.length) {
      const larger = new Uint8Array(2 * needed);
      larger.set(this.#buffer.subarray(this.#start, this.#length));
      this.#buffer = larger;
    } else this.#buffer.copyWithin(0, this.#start, this.#length);
    this.#buffer.set(chunk, rest);
    this.#length = needed;
    this.#base += this.#start;
    this.#at -= this.#start;
    this.#seen -= this.#start;
    if (this.#opened) this.#opened.at -= this.#start;
    this.#start = 0;
  }

  #readLines(last: boolean): void {
    const buffer = this.#buffer;
    const length = this.#length;
    for (;;) {
      let stop = Math.max(this.#at, this.#seen);
      while (stop < length && buffer[stop] !== lf && buffer[stop] !== cr) stop++;
      // The end of a line is known when the byte after it is.
      this.#seen = stop;
      if (stop >= length - 1 && !last) return;
      if (this.#at >= length) return;
      const next = buffer[stop] === cr && buffer[stop + 1] === lf ? stop + 2 : stop + 1;
      this.#readLine(this.#at, stop);
      this.#at = Math.min(next, length);
      this.#line++;
    }
  }

  #readLine(from: number, to: number): void {
    const buffer = this.#buffer;
    let first = from;
    while (first < to && isBlank(buffer[first] ?? 0)) first++;
    // An escaped line (PGN standard, section 6) is passed over: what is left of it is its end.
    if (first === to || (buffer[from] === percent && !this.#state.inBrace)) {
      this.#blankBefore = true;
      return;
    }
    if (this.#readTagLine(from, first, to) || this.#readTagInLines(from, first, to)) return;
    const { result, inBrace, depth } = this.#state;
    if (result && !inBrace && depth === 0) {
      const isComment = buffer[first] === brace || buffer[first] === semicolon;
      if (isComment ? this.#blankBefore : isMoveOne(buffer, first, to)) this.#cut(from);
    }
    this.#blankBefore = false;
    this.#readMoves(first, to);
  }

  /** Reads a line that begins with a tag; false where it does not. */
  #readTagLine(from: number, first: number, to: number): boolean {
    const { inBrace, started, tags } = this.#state;
    if (this.#buffer[first] !== bracket || (inBrace && !this.#blankBefore)) return false;
    const tag = tagAt(this.#buffer, first, to);
    // Text in a comment may look much like a tag: there, a tag begins with a capital at the margin.
    const isStrict = tag !== undefined && first === from && /^[A-Z]/.test(tag.name);
    if (tag === undefined || (inBrace && !isStrict)) return false;
    if (started || (this.#blankBefore && tags.has(tag.name))) this.#cut(from);
    this.#blankBefore = false;
    this.#readTags(first, to);
    return true;
  }

  /** Reads a line of a tag that stands on several: its name, its value or its last bracket. */
  #readTagInLines(from: number, first: number, to: number): boolean {
    const buffer = this.#buffer;
    const opened = this.#opened;
    this.#opened = undefined;
    const { inBrace, started } = this.#state;
    if (inBrace) return false;
    if (opened !== undefined && buffer[first] === quote) {
      if (started) this.#cut(opened.at, opened.line);
      this.#state.tags.add(opened.name);
      this.#readTags(tagValueEnd(buffer, first, to), to);
      return true;
    }
    // It was no tag.
    if (opened !== undefined) this.#state.started = true;
    if (buffer[first] === closingBracket && !this.#state.started) {
      this.#readTags(first + 1, to);
      return true;
    }
    if (buffer[first] !== bracket || first !== from) return false;
    const { name, end } = tagNameAt(buffer, first, to);
    if (name === '' || end < to) return false;
    this.#opened = { at: from, line: this.#line, name };
    this.#blankBefore = false;
    return true;
  }

  #readTags(from: number, to: number): void {
    const buffer = this.#buffer;
    this.#state.inBrace = false;
    let next = from;
    for (let tag = tagAt(buffer, next, to); tag !== undefined; tag = tagAt(buffer, next, to)) {
      this.#state.tags.add(tag.name);
      next = tag.end;
      while (next < to && isBlank(buffer[next] ?? 0)) next++;
    }
    this.#readMoves(next, to);
  }

  /** Looks at movetext only for brackets, comments and results. */
  #readMoves(from: number, to: number): void {
    const buffer = this.#buffer;
    const state = this.#state;
    for (let index = from; index < to; index++) {
      if (state.inBrace) {
        while (index < to && buffer[index] !== closingBrace) index++;
        if (index < to) state.inBrace = false;
        continue;
      }
      const role = roles[buffer[index] ?? 0];
      if (role === blank) continue;
      if (role === brace) state.inBrace = true;
      else if (role === semicolon) return;
      else {
        state.started = true;
        if (role === ordinary) continue;
        if (role === open) state.depth++;
        else if (role === close) state.depth = Math.max(0, state.depth - 1);
        else if (state.depth === 0 && isWordStart(buffer, index, from)) {
          const result = resultAt(buffer, index, to);
          if (result > 0) {
            state.result = true;
            index += result - 1;
          }
        }
      }
    }
  }

  #cut(where: number, line = this.#line): void {
    const start = this.#start;
    if (where > start && !this.#skipping && hasInk(this.#buffer, start, where)) {
      this.#give(where, false);
    }
    this.#skipping = false;
    this.#start = where;
    this.#firstLine = line;
    this.#state = freshState();
  }

  /** Gives out the beginning of what is too long, and passes over the rest of it. */
  #cutLong(): void {
    if (!this.#skipping) this.#give(Math.min(this.#start + beginning, this.#length), true);
    this.#skipping = true;
    // A line may go on; its beginning does not matter any more.
    this.#start = Math.max(this.#start, this.#length - 1);
    this.#at = Math.max(this.#at, this.#start);
    this.#state.started = true;
  }

  #give(end: number, tooLong: boolean): void {
    this.#games.push({
      bytes: this.#buffer.subarray(this.#start, end),
      tooLong,
      line: this.#firstLine,
      start: this.#base + this.#start,
      end: this.#base + end,
    });
  }
}
