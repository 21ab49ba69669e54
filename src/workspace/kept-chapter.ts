import type { ChapterSummary, CheckedChapter } from '../check/index.ts';
import type { ChapterFront, GivenName, PlayedChapter, SaidElsewhere } from '../model/index.ts';
import type { ChapterSyntax } from '../read/index.ts';
import type { AskedOfFiles } from './questions.ts';

/**
 * What is kept of a chapter: plain data, each part with all that it depends on, so that it holds as long as
 * those are as they were.
 */
export interface KeptChapter {
  readonly file: string;
  /** Hash of its text. */
  readonly text: string;
  /** What reading it asked of the files beside it. */
  readonly asked: readonly AskedOfFiles[];
  /** The side and the language of the course, and which rules are off. */
  readonly settings: string;
  /** What stands above its text. */
  readonly front: ChapterFront;
  readonly played: KeptPlay;
  /** Hash of what other chapters say of its positions. */
  readonly said: string;
  readonly summary: ChapterSummary;
  readonly checked: CheckedChapter;
  /** The chapter itself, where this process has read it. */
  readonly live?: LiveChapter;
}

/** What became of it on the board, as others see it. */
export interface KeptPlay {
  readonly names: readonly GivenName[];
  readonly elsewhere: readonly SaidElsewhere[];
  /** The names that it asked for, and the print of each. */
  readonly asked: readonly (readonly [name: string, print: string])[];
  readonly isCircular: boolean;
}

export interface LiveChapter {
  /** Whether this process read it from its text. */
  readonly wasRead: boolean;
  readonly syntax: ChapterSyntax;
  readonly played: PlayedChapter;
}
