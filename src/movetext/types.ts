/**
 * The syntax tree of movetext in the PGN standard's import format (section 8.2).
 * Syntax only: nothing here knows whether a move is legal. All places are offsets in UTF-16
 * units into the text that was parsed, so that the reader can map them to any file.
 */

/** A half-open stretch of the parsed text. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

export interface Movetext {
  /** The tag pairs before the moves, of a pasted game. */
  readonly tags: readonly Tag[];
  readonly line: Line;
  /** Where the parser met what it could not read; the tree holds all the rest. */
  readonly problems: readonly MovetextProblem[];
  /** How many more there are, where there are too many to be told. */
  readonly untold?: number;
  /** Lines that begin with `%` (PGN standard, section 6): they are passed over. */
  readonly escaped?: readonly Span[];
  /** Whether it is longer than any game can be; then nothing of it is given but its tags. */
  readonly tooLong?: true;
}

export interface Tag {
  readonly name: string;
  readonly value: string;
  readonly span: Span;
  readonly valueSpan: Span;
}

/** A run of moves: the main line or the inside of a variation. */
export interface Line {
  readonly before: readonly Comment[];
  readonly moves: readonly WrittenMove[];
  /** `1-0`, `0-1`, `1/2-1/2` or `*`, in this spelling whatever was written at its span. */
  readonly result?: Token;
  readonly span: Span;
}

export interface Token {
  readonly text: string;
  readonly span: Span;
}

/** A move as the author wrote it. */
export interface WrittenMove {
  readonly number?: WrittenNumber;
  /** The move without suffix glyphs but with its `+` or `#`: `Nf3`, `0-0`, `exd8=Q+`. */
  readonly san: Token;
  readonly glyphs: readonly Glyph[];
  /** Comments and variations after the move, in the order of the text. */
  readonly after: readonly (Comment | Variation)[];
}

/** A move number indication, any number of periods: `12.`, `12...`, `12`, `12 . ...`. */
export interface WrittenNumber extends Token {
  readonly value: number;
  readonly dots: number;
}

/** A numeric annotation glyph, written `$n`, as a suffix, or as a printed sign. */
export interface Glyph extends Token {
  readonly nag: number;
}

export interface Comment {
  readonly type: 'comment';
  /** `{…}` or `; to the end of the line`. */
  readonly form: 'brace' | 'line';
  /** The text between the delimiters, untouched. */
  readonly text: string;
  /** The text between the delimiters. */
  readonly span: Span;
  /** With the delimiters. */
  readonly outer: Span;
}

/** An alternative to the move before it; it has at least one move. */
export interface Variation {
  readonly type: 'variation';
  readonly line: Line;
  /** With the parentheses. */
  readonly span: Span;
}

const problemKinds = [
  'comment-unclosed',
  'variation-unclosed',
  'variation-unopened',
  'variation-without-move',
  'variation-empty',
  'text-unreadable',
  'glyph-unreadable',
  'glyph-misplaced',
  'tag-unreadable',
  'tag-misplaced',
  'number-without-move',
  'text-after-result',
] as const;

export interface MovetextProblem {
  readonly kind: (typeof problemKinds)[number];
  readonly span: Span;
  /** The text that is in no tree, where that is more than `span`. */
  readonly lost?: Span;
  /** One sentence: what the parser met. */
  readonly message: string;
  /** What to do about it. */
  readonly hint: string;
}
