import type { Root } from 'hast';
import { toString as plainText } from 'mdast-util-to-string';
import type { ChapterSection } from '../site-data.ts';

/** The sections of a chapter: its headings of the second level, but for that of the notes, which authors do not write. */
export function sectionsOf({ children }: Root): ChapterSection[] {
  return children.flatMap((node) => {
    if (node.type !== 'element' || node.tagName !== 'h2') return [];
    const { id } = node.properties;
    return typeof id === 'string' ? [{ id, title: plainText(node).trim() }] : [];
  });
}

/** Id of the first exercise in a chapter. */
export function firstExercise({ children }: Root): string | undefined {
  for (const node of children) {
    if (node.type !== 'element' || node.data?.role !== 'exercise') continue;
    const { id } = node.properties;
    return typeof id === 'string' ? id : undefined;
  }
  return undefined;
}
