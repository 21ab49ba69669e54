/**
 * Movetext without places: what is needed to write it. A parsed `Movetext` is one; a game that is
 * composed from other data needs no spans.
 */
export interface PlainMovetext {
  readonly tags: readonly PlainTag[];
  readonly line: PlainLine;
}

export interface PlainTag {
  readonly name: string;
  readonly value: string;
}

export interface PlainLine {
  readonly before: readonly PlainComment[];
  readonly moves: readonly PlainMove[];
  readonly result?: { readonly text: string };
}

export interface PlainMove {
  /** Read for the first move only: where the numbering starts if nothing else tells. */
  readonly number?: { readonly value: number; readonly dots: number };
  readonly san: { readonly text: string };
  readonly glyphs: readonly { readonly nag: number }[];
  readonly after: readonly (PlainComment | PlainVariation)[];
}

export interface PlainComment {
  readonly type: 'comment';
  readonly form: 'brace' | 'line';
  readonly text: string;
}

export interface PlainVariation {
  readonly type: 'variation';
  readonly line: PlainLine;
}
