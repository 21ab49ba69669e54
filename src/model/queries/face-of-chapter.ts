import type { Chapter } from '../types.ts';

/**
 * All that others may show of a chapter, as a text: everything but its words outside of blocks, and where anything
 * stands in its file. Nor what only the whole course knows of its blocks, which follows from all chapters' faces.
 * @param ids the ids of its page that its words bring, in order.
 */
export function faceOfChapter(chapter: Chapter, ids: readonly string[]): string {
  const { id, title, summary, learn, draft, page, language, file, media, blocks, names } = chapter;
  return JSON.stringify(
    { id, title, summary, learn, draft, page, language, file, media, blocks, names, ids },
    withoutPlaces,
  );
}

const ofTheCourse: ReadonlySet<string> = new Set(['matches', 'leaves']);

function withoutPlaces(key: string, value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  if (ofTheCourse.has(key)) return undefined;
  return 'start' in value && 'end' in value && 'file' in value ? undefined : value;
}
