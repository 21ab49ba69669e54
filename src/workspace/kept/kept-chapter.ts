import type { ChapterSummary, CheckedChapter } from '../../check/index.ts';
import type { ChapterFront, GivenName, PlayedChapter, SaidElsewhere } from '../../model/index.ts';
import type { ChapterSyntax } from '../../read/index.ts';
import type { AskedOfFiles } from '../questions.ts';

/**
 * What is kept of a chapter: plain data, each part with everything that it depends on, and valid while that is
 * unchanged.
 */
export interface KeptChapter {
  readonly file: string;
  /** Hash of its text. */
  readonly text: string;
  /** What parsing it asked of the other files. */
  readonly asked: readonly AskedOfFiles[];
  /** Print of the settings that its findings depend on. */
  readonly settings: string;
  /** Its front matter. */
  readonly front: ChapterFront;
  readonly played: KeptPlay;
  /** Print of what other chapters say of its positions. */
  readonly said: string;
  readonly summary: ChapterSummary;
  readonly checked: CheckedChapter;
  /** The chapter itself, if this process has it. */
  readonly live?: LiveChapter;
}

/** The play of a chapter as others see it. */
export interface KeptPlay {
  readonly names: readonly GivenName[];
  readonly elsewhere: readonly SaidElsewhere[];
  /** The names that it used, with a print of each. */
  readonly asked: readonly (readonly [name: string, print: string])[];
  readonly isCircular: boolean;
}

export interface LiveChapter {
  /** Whether this process parsed it. */
  readonly wasRead: boolean;
  /** Absent if it was released: then `KeptSyntax` has it. */
  readonly syntax?: ChapterSyntax;
  readonly played: PlayedChapter;
}
