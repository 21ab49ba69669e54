import type { CourseTable } from '../../contract/course-table.ts';
import { positionOf } from '../../lookup/find.ts';
import type { OwnEntry } from './own-entry.ts';

/** The notes of a chapter, or those at positions that the course does not have. */
export interface NoteGroup {
  readonly title: string;
  readonly entries: readonly OwnEntry[];
}

/**
 * Notes by the chapter that their position stands in first, in the order of the course; those of the reader's own
 * lines behind, the latest first.
 * @param beside the title of those.
 */
export function inOrder(
  entries: readonly OwnEntry[],
  table: CourseTable,
  beside: string,
): NoteGroup[] {
  const placed = entries.flatMap((entry) => {
    const index = positionOf(table, entry.key);
    const chapter = index === undefined ? undefined : table.positions[index]?.at[0]?.[0];
    return index === undefined || chapter === undefined ? [] : [{ entry, index, chapter }];
  });
  const known = new Set(placed.map(({ entry }) => entry));
  const own = entries.filter((entry) => !known.has(entry));
  const groups = table.chapters.map(({ title }, chapter) => ({
    title,
    entries: placed
      .filter((each) => each.chapter === chapter)
      .sort((one, other) => one.index - other.index)
      .map(({ entry }) => entry),
  }));
  const last = { title: beside, entries: own.sort((one, other) => other.changed - one.changed) };
  return [...groups, last].filter((group) => group.entries.length > 0);
}
