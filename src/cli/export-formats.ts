/** The formats of `linewright export`, apart from the code that writes them, which is slow to load. */
export const exportFormats = ['epub', 'pgn'] as const;

export interface ExportOptions {
  /** Default: by the extension of `out`. */
  readonly format?: (typeof exportFormats)[number];
  readonly out?: string;
  readonly site?: string;
  readonly language?: string;
  /** Date of an e-book, as `2026-11-25`. */
  readonly date?: string;
  /** The only chapter of a PGN file. */
  readonly chapter?: string;
  /** Whether a PGN file is in ISO 8859-1 instead of UTF-8. */
  readonly latin1?: boolean;
  /** Whether the PGN file holds the whole source, so that `import` restores the course. */
  readonly withDirectives?: boolean;
}
