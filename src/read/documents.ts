/** Anything that has chapters, and pages beside them. */
export interface WithPages<One> {
  readonly chapters: readonly One[];
  readonly pages?: readonly One[] | undefined;
}

/**
 * The documents of a course, that is, everything that is read, played and checked as a chapter is: the chapters, then
 * the pages.
 */
export function documentsOf<One>({ chapters, pages = [] }: WithPages<One>): readonly One[] {
  return pages.length === 0 ? chapters : [...chapters, ...pages];
}

/** Whether a file of a course is one of its pages. @param file relative to the course folder, with `/`; also one of a translation. */
export function isPageFile(file: string): boolean {
  return /(?:^|\/)pages\/[^/]*$/.test(file);
}
