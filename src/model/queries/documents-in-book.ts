import type { Chapter, Course } from '../types.ts';

/** The chapters, and the author's pages that the book and the handout include. */
export function documentsInBook({ chapters, pages }: Course): readonly Chapter[] {
  return [...chapters, ...pages.filter(({ page }) => page.book)];
}
