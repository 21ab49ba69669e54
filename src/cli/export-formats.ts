/** What `linewright export` can write; apart from the writing, which takes time to load. */
export const exportFormats = ['epub', 'pgn'] as const;

export interface ExportOptions {
  /** Told by the end of `out` unless given. */
  readonly format?: (typeof exportFormats)[number];
  readonly out?: string;
  readonly site?: string;
  /** One that the course is translated into. */
  readonly language?: string;
  /** Of an e-book, as `2026-11-25`. */
  readonly date?: string;
  /** The only chapter of a PGN file. */
  readonly chapter?: string;
  /** Whether a PGN file is in ISO 8859-1 instead of UTF-8. */
  readonly latin1?: boolean;
  /** Whether a PGN file holds all of the course, so that `import` makes the same course of it. */
  readonly withDirectives?: boolean;
}
