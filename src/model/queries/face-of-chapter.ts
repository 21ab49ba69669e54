import type { Chapter } from '../types.ts';

/**
 * Everything that others may show of a chapter, as one string: all but its words outside blocks and all places in its
 * file. It also leaves out what only the whole course knows of its blocks, since that follows from the faces of all
 * chapters.
 * @param ids the ids that its words bring to its page, in order.
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
