export const compareFormats = ['text', 'json'] as const;

export interface CompareOptions {
  readonly format: (typeof compareFormats)[number];
  /** A name or part of one: only games of this player with the course's side. */
  readonly player?: string;
  /** Every position instead of the most frequent. */
  readonly all: boolean;
}
