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

export interface GameSplitter {
  /**
   * The games that end within the bytes given so far. They lie in memory that the next call uses again,
   * so they are read before it.
   */
  readonly push: (chunk: Uint8Array) => GameBytes[];
  /** The rest. */
  readonly end: () => GameBytes[];
}

/** A game of a thousand moves with a comment at each is far shorter: what is longer is no game. */
const defaultLongest = 4 * 1024 * 1024;
/** So much of what is longer is given out: enough to name it. */
const beginning = 16_384;

const [lf, cr, quote, percent, open, close] = [10, 13, 34, 37, 40, 41];
const [semicolon, bracket, closingBracket, brace, closingBrace] = [59, 91, 93, 123, 125];

/**
 * Cuts a PGN file into its games as it comes, in pieces of any size: the one place that says where
 * games begin. It works on bytes: every sign that counts is ASCII, so each game can have an encoding
 * of its own. A game begins at a line with a tag after moves, or, where games have no tags, after a
 * result at a line with move number 1 or with a comment that a blank line parts from it. Brackets
 * within a comment are none of these, unless the comment was left open: then a tag after a blank line
 * ends it.
 */
export function createGameSplitter(longestGame = defaultLongest): GameSplitter {
  /** What has come of the game that is being read, and where the next line in it begins. */
  let buffer: Uint8Array = new Uint8Array(0);
  let length = 0;
  /** Where the buffer begins in the file. */
  let base = 0;
  let at = 0;
  /** How far the end of that line has been looked for. */
  let seen = 0;
  let start = 0;
  /** The lines of the file that the line at `at` and the game are in. */
  let line = 1;
  let firstLine = 1;
  let games: GameBytes[] = [];
  let state = freshState();
  let blankBefore = true;
  let skipping = false;

  function push(chunk: Uint8Array): GameBytes[] {
    append(chunk);
    games = [];
    readLines(false);
    if (length - start > longestGame) cutLong();
    return games;
  }

  function end(): GameBytes[] {
    games = [];
    readLines(true);
    cut(length);
    return games;
  }

  /** Puts a chunk behind what is left of the one before. */
  function append(chunk: Uint8Array): void {
    const rest = length - start;
    const needed = rest + chunk.length;
    if (needed > buffer.length) {
      const larger = new Uint8Array(2 * needed);
      larger.set(buffer.subarray(start, length));
      buffer = larger;
    } else buffer.copyWithin(0, start, length);
    buffer.set(chunk, rest);
    length = needed;
    base += start;
    at -= start;
    seen -= start;
    start = 0;
  }

  function readLines(last: boolean): void {
    for (;;) {
      let stop = Math.max(at, seen);
      while (stop < length && buffer[stop] !== lf && buffer[stop] !== cr) stop++;
      // The end of a line is known when the byte after it is.
      seen = stop;
      if (stop >= length - 1 && !last) return;
      if (at >= length) return;
      const next = buffer[stop] === cr && buffer[stop + 1] === lf ? stop + 2 : stop + 1;
      readLine(at, stop);
      at = Math.min(next, length);
      line++;
    }
  }

  function readLine(from: number, to: number): void {
    let first = from;
    while (first < to && isBlank(buffer[first] ?? 0)) first++;
    // An escaped line (PGN standard, section 6) is passed over: what is left of it is its end.
    if (first === to || (buffer[from] === percent && !state.inBrace)) {
      blankBefore = true;
      return;
    }
    if (buffer[first] === bracket && (!state.inBrace || blankBefore)) {
      const tag = tagAt(buffer, first, to);
      // Text in a comment may look much like a tag: there, a tag begins with a capital at the margin.
      const strict = tag !== undefined && first === from && /^[A-Z]/.test(tag.name);
      if (tag !== undefined && (!state.inBrace || strict)) {
        if (state.started || (blankBefore && state.tags.has(tag.name))) cut(from);
        blankBefore = false;
        readTags(first, to);
        return;
      }
    }
    if (state.result && !state.inBrace && state.depth === 0) {
      const isComment = buffer[first] === brace || buffer[first] === semicolon;
      if (isComment ? blankBefore : isMoveOne(buffer, first, to)) cut(from);
    }
    blankBefore = false;
    readMoves(first, to);
  }

  function readTags(from: number, to: number): void {
    state.inBrace = false;
    let next = from;
    for (let tag = tagAt(buffer, next, to); tag !== undefined; tag = tagAt(buffer, next, to)) {
      state.tags.add(tag.name);
      next = tag.end;
      while (next < to && isBlank(buffer[next] ?? 0)) next++;
    }
    readMoves(next, to);
  }

  /** Looks at movetext only for brackets, comments and results. */
  function readMoves(from: number, to: number): void {
    for (let index = from; index < to; index++) {
      const byte = buffer[index] ?? 0;
      if (state.inBrace) {
        while (index < to && buffer[index] !== closingBrace) index++;
        if (index < to) state.inBrace = false;
        continue;
      }
      const role = roles[byte];
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

  function cut(where: number): void {
    if (where > start && !skipping && hasInk(buffer, start, where)) {
      games.push({ bytes: buffer.subarray(start, where), tooLong: false, ...placeTo(where) });
    }
    skipping = false;
    start = where;
    firstLine = line;
    state = freshState();
  }

  function placeTo(end: number) {
    return { line: firstLine, start: base + start, end: base + end };
  }

  /** Gives out the beginning of what is too long, and passes over the rest of it. */
  function cutLong(): void {
    if (!skipping) {
      const bytes = buffer.subarray(start, start + beginning);
      games.push({ bytes, tooLong: true, ...placeTo(start + bytes.length) });
    }
    skipping = true;
    // A line may go on; its beginning does not matter any more.
    start = Math.max(start, length - 1);
    at = Math.max(at, start);
    state.started = true;
  }

  return { push, end };
}

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

/** The tag pair that begins at an offset: its name, and where it ends, if on this line. */
function tagAt(
  bytes: Uint8Array,
  from: number,
  to: number,
): { name: string; end: number } | undefined {
  if (bytes[from] !== bracket) return undefined;
  let at = from + 1;
  while (at < to && isBlank(bytes[at] ?? 0)) at++;
  const nameStart = at;
  while (at < to && isNameByte(bytes[at] ?? 0)) at++;
  let name = '';
  for (let next = nameStart; next < Math.min(at, nameStart + 255); next++) {
    name += String.fromCharCode(bytes[next] ?? 0);
  }
  while (at < to && isBlank(bytes[at] ?? 0)) at++;
  if (name === '' || bytes[at] !== quote) return undefined;
  for (at++; at < to; at++) {
    if (bytes[at] === 92) at++;
    else if (bytes[at] === quote) {
      let after = at + 1;
      while (after < to && isBlank(bytes[after] ?? 0)) after++;
      if (bytes[after] === closingBracket && after < to) return { name, end: after + 1 };
      break;
    }
  }
  return { name, end: to };
}

/** Whether a line begins with the number of the first move, and not with a result. */
function isMoveOne(bytes: Uint8Array, from: number, to: number): boolean {
  if (bytes[from] !== 49) return false;
  const next = from + 1 < to ? bytes[from + 1] : undefined;
  return next === undefined || next === 46 || isBlank(next);
}

const results = ['1-0', '0-1', '1/2-1/2', '1/2', '*', '½-½', '½'].flatMap((result) => [
  new TextEncoder().encode(result),
  Uint8Array.from(result, (sign) => sign.charCodeAt(0)),
]);

/** What a byte of movetext may be: itself for a bracket or the like. */
const [ordinary, blank, resultStart] = [1, 32, 42];
const roles = Uint8Array.from({ length: 256 }, (_, byte) => {
  if (isBlank(byte)) return blank;
  if ([brace, semicolon, open, close].includes(byte)) return byte;
  return results.some(([first]) => first === byte) ? resultStart : ordinary;
});

/** The length of the result that stands at an offset, if one does. */
function resultAt(bytes: Uint8Array, at: number, to: number): number {
  const first = bytes[at];
  for (const result of results) {
    if (result[0] !== first || at + result.length > to) continue;
    if (!result.every((byte, index) => bytes[at + index] === byte)) continue;
    const next = at + result.length < to ? (bytes[at + result.length] ?? 0) : 32;
    if (first === 42 || !(isNameByte(next) || next === 47 || next >= 0x80)) return result.length;
  }
  return 0;
}

function isWordStart(bytes: Uint8Array, at: number, from: number): boolean {
  if (at === from) return true;
  const before = bytes[at - 1] ?? 32;
  return !isNameByte(before) && before !== 47 && before !== 45 && before < 0x80;
}

function hasInk(bytes: Uint8Array, from: number, to: number): boolean {
  for (let at = from; at < to; at++) if (!isSpace(bytes[at] ?? 32)) return true;
  return false;
}

/** Space within a line, and the bytes of a byte order mark. */
function isBlank(byte: number): boolean {
  return byte === 32 || (byte >= 9 && byte <= 12 && byte !== lf) || isMark(byte);
}

function isMark(byte: number): boolean {
  return byte === 0xef || byte === 0xbb || byte === 0xbf;
}

function isSpace(byte: number): boolean {
  return isBlank(byte) || byte === lf || byte === cr;
}

function isNameByte(byte: number): boolean {
  return (
    (byte >= 97 && byte <= 122) ||
    (byte >= 65 && byte <= 90) ||
    (byte >= 48 && byte <= 57) ||
    byte === 95
  );
}
