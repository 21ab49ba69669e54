import type { Diagnostic } from '../diagnostics/index.ts';
import type { Course } from '../model/index.ts';

declare const previewed: unique symbol;

/**
 * A course as it stands, with what is wrong in it: for the preview of `dev`, which marks that on its pages. Whatever
 * is published takes a `CheckedCourse`, and this is none.
 */
export interface PreviewedCourse {
  readonly course: Course;
  /** All findings, in the order of the text. */
  readonly diagnostics: readonly Diagnostic[];
  readonly [previewed]: true;
}

/** A course for its author's own eyes, whether or not it has errors. */
export function previewCourse(course: Course, diagnostics: readonly Diagnostic[]): PreviewedCourse {
  return { course, diagnostics } as PreviewedCourse;
}
