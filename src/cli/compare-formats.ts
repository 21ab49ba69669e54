export const compareFormats = ['text', 'json'] as const;

export interface CompareOptions {
  readonly format: (typeof compareFormats)[number];
  /** A name or a part of one: only games in which this player had the course's side. */
  readonly player?: string;
  /** Every position instead of the most frequent. */
  readonly all: boolean;
}
