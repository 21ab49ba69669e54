/** Reads the words of one claim from left to right. */
import {
  between,
  type Color,
  colors,
  initialPosition,
  isMoveFault,
  isSquare,
  playMove,
  type Square,
} from '../../../chess/index.ts';

/** A word of a claim and where it stands in the claim's text. */
export interface Word {
  readonly text: string;
  readonly offset: number;
}

/** Why a claim cannot be read: one English clause, and the stretch of the text that is at fault. */
export interface ClaimFault {
  readonly reason: string;
  readonly offset: number;
  readonly length: number;
  readonly hint?: string;
  readonly isUnknown?: true;
}

/** Thrown by the reader and caught by `parseClaim` alone, so that a parser is one expression. */
export class UnreadableClaim extends Error {
  readonly fault: ClaimFault;

  constructor(fault: ClaimFault) {
    super(fault.reason);
    this.fault = fault;
  }
}

/** Two squares on one line, with at least one square between them. */
export interface LineArgument {
  readonly from: Square;
  readonly to: Square;
  readonly between: readonly Square[];
}

const wingFiles: Readonly<Record<string, readonly string[]>> = Object.assign(Object.create(null), {
  queenside: ['a', 'd'],
  kingside: ['e', 'h'],
});

export class ArgumentReader {
  /** Names of positions that the claim speaks of. */
  readonly labels: Word[] = [];
  private readonly words: readonly Word[];
  /** The offset just behind the claim. */
  private readonly end: number;
  private at = 0;

  constructor(words: readonly Word[], end: number) {
    this.words = words;
    this.end = end;
  }

  get done(): boolean {
    return this.at >= this.words.length;
  }

  get next(): string | undefined {
    return this.words[this.at]?.text;
  }

  square(what = 'a square'): Square {
    return this.read(what, (word) => (isSquare(word) ? word : undefined), 'is no square');
  }

  /** The squares up to the end of the claim, at least so many. */
  squares(least: number): Square[] {
    const found: Square[] = [];
    while (!this.done || found.length < least) found.push(this.square());
    return found;
  }

  /** A file, 1 (a) to 8 (h). */
  file(): number {
    const letter = this.read(
      'a file, a to h',
      (word) => (/^[a-h]$/.test(word) ? word : undefined),
      'is no file',
    );
    return letter.charCodeAt(0) - 96;
  }

  /** A wing or a stretch of files: `queenside` (a to d), `kingside` (e to h), `a-c`. */
  files(): number[] {
    return this.read(
      'a wing or files',
      (word) => {
        const [first, last] = wingFiles[word] ?? word.split(/[-\u2010-\u2013]/);
        const [from, to] = [first, last].map((letter) => ' abcdefgh'.indexOf(letter || '?'));
        if (from === undefined || to === undefined || from < 1 || to < from) return undefined;
        if (first?.length !== 1 || last?.length !== 1) return undefined;
        return Array.from({ length: to - from + 1 }, (_, index) => from + index);
      },
      'is neither `kingside`, `queenside` nor files such as `a-c`',
    );
  }

  color(): Color {
    return this.read(
      'a side, `white` or `black`',
      (word) => colors.find((color) => color === word),
      'is no side: write `white` or `black`',
    );
  }

  /** A side, where the claim goes on. */
  optionalColor(): Color | undefined {
    return this.done ? undefined : this.color();
  }

  oneOf<Choice extends string>(choices: readonly Choice[]): Choice {
    const named = choices.map((choice) => `\`${choice}\``).join(' or ');
    return this.read(
      named,
      (word) => choices.find((choice) => choice === word),
      `stands where ${named} is expected`,
    );
  }

  /** Whether the next word is this one; it is then read. */
  keyword(word: string): boolean {
    if (this.words[this.at]?.text !== word) return false;
    this.at++;
    return true;
  }

  /** A whole number from `least` on. */
  count(least: number): number {
    return this.read(
      'a number',
      (word) => (/^\d{1,3}$/.test(word) && Number(word) >= least ? Number(word) : undefined),
      `is no whole number from ${least} on`,
    );
  }

  /** A whole number with its sign: `+1`, `-2` (a minus sign serves too), `0`. */
  signed(): number {
    return this.read(
      'a number of pawns, such as `+1`',
      (word) =>
        /^[+\-\u2212]?\d{1,3}$/.test(word) ? Number(word.replace('\u2212', '-')) : undefined,
      'is no whole number of pawns, such as `+1` or `-3`',
    );
  }

  /** A loss in pawns, as a whole number below 0: `-3`. Gives how much is lost, 3. */
  loss(): number {
    return this.read(
      'a loss in pawns, such as `-3`',
      (word) => (/^[-\u2212][1-9]\d?$/.test(word) ? Number(word.slice(1)) : undefined),
      'is no loss in pawns, such as `-3`',
    );
  }

  label(): string {
    const word = this.words[this.at];
    const name = this.read('the name of a position', (text) => text, '');
    if (word) this.labels.push(word);
    return name;
  }

  /** A move as `playMove` reads it; whether it can be played is for the judge. */
  move(): string {
    return this.read(
      'a move',
      (word) => {
        const played = playMove(initialPosition, word);
        return isMoveFault(played) && played.kind === 'unreadable' ? undefined : word;
      },
      'is not written as a move',
    );
  }

  /** `a2-g8`. */
  line(): LineArgument {
    const word = this.words[this.at];
    const line = this.read(
      'two squares, such as `a2-g8`',
      (text) => {
        const [from = '', to = '', more] = text.split(/[-\u2010-\u2013]/);
        return isSquare(from) && isSquare(to) && more === undefined ? { from, to } : undefined;
      },
      'is no line from one square to another, such as `a2-g8`',
    );
    const way = between(line.from, line.to);
    if (way === undefined || way.length === 0) {
      const squares = `${line.from} and ${line.to}`;
      const reason =
        way === undefined
          ? `${squares} share no rank, file or diagonal`
          : `no square lies between ${squares}`;
      return this.fail(word, reason);
    }
    return { ...line, between: way };
  }

  /** Leaves what is not read yet to somebody else, who adds the names among it to `labels`. */
  handOver(): { readonly words: readonly Word[]; readonly end: number } {
    const words = this.words.slice(this.at);
    this.at = this.words.length;
    return { words, end: this.end };
  }

  /** Refuses what is left over. */
  finish(): void {
    const word = this.words[this.at];
    if (!word) return;
    const last = this.words[this.at - 1];
    const where = last ? ` behind \`${last.text}\`` : ' behind the name';
    this.fail(word, `nothing more is expected${where}, and \`${word.text}\` stands there`);
  }

  private read<Value>(
    what: string,
    convert: (word: string) => Value | undefined,
    complaint: string,
  ): Value {
    const word = this.words[this.at];
    if (!word) return this.fail(word, `${what} is missing`);
    const value = convert(word.text);
    if (value === undefined) return this.fail(word, `\`${word.text}\` ${complaint}`);
    this.at++;
    return value;
  }

  private fail(word: Word | undefined, reason: string): never {
    const { offset, length } = word
      ? { offset: word.offset, length: word.text.length }
      : { offset: this.end, length: 0 };
    if (word?.text.endsWith(',')) {
      const comma = 'claims are joined with `and`, not with a comma';
      throw new UnreadableClaim({ reason: comma, offset, length });
    }
    throw new UnreadableClaim({ reason, offset, length });
  }
}
