import type { ChapterWords } from './words.ts';

/** The exercises of a course as its chapters show them: what practice asks beside the moves. */
export interface CourseExercises {
  /** Raised when a reader of older exercises would misread these. */
  readonly format: 1;
  readonly words: ChapterWords;
  readonly exercises: readonly CourseExercise[];
}

export interface CourseExercise {
  /** Index of its chapter. */
  readonly chapter: number;
  /** `Position.key`, by which its result is kept. */
  readonly key: string;
  /** Its section, as on the chapter's page; links lead from any page of the site. */
  readonly html: string;
}
