export const gapsFormats = ['text', 'json'] as const;

export interface GapsOptions {
  readonly format: (typeof gapsFormats)[number];
  /** PGN files; `-` is the standard input. */
  readonly games?: readonly string[];
  /** Games in which a reply must have been played. */
  readonly atLeast: number;
  /** Every reply instead of the first. */
  readonly all: boolean;
}
