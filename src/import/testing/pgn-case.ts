/** A construct of the PGN standard, and what becomes of it when its file is imported. */
export interface PgnCase {
  readonly number: number;
  readonly what: string;
  /** The file; a list of numbers is its bytes. */
  readonly pgn: string | readonly number[];
  /** The moves of the blocks that are made of it, in the export format, with single spaces. */
  readonly blocks: readonly string[];
  /** A piece of each message, in their order; nothing else is told. */
  readonly told?: readonly string[];
  /** Pieces of the texts that the notes quote. */
  readonly quoted?: readonly string[];
  /** Tags that the first block must have. */
  readonly tags?: Readonly<Record<string, string>>;
  /** Words that stand somewhere in the chapters. */
  readonly words?: readonly string[];
  /** Why the outside reader, chessops, is not asked about the first game. */
  readonly alone?: string;
}

/** The bytes of a text in ISO 8859-1. */
export const latin1 = (text: string): number[] => [...text].map((sign) => sign.codePointAt(0) ?? 0);
