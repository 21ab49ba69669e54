import { chapterAt, inCourseOrder, type PatternMatch } from '../model/index.ts';
import { nodeAt, type SharedContext } from './context.ts';
import type { ChapterPlaces } from './document.ts';
import { namesByKey } from './names-by-key.ts';
import { numberedMove } from './notation.ts';

/**
 * The positions that have a pattern: each once, in the chapter that the reader is in if it stands there, else
 * where it stands first. `here` is the file of that chapter; absent on a page that is none.
 */
export function patternPlaces(
  context: SharedContext,
  matches: readonly PatternMatch[],
  here: string | undefined,
): ChapterPlaces[] {
  const { course, strings } = context;
  const names = namesByKey(course);
  const refs = matches.flatMap(({ key }) => {
    const at = course.graph[key]?.at ?? [];
    const ref = at.find((place) => place.chapter === here) ?? at[0];
    return ref === undefined ? [] : [{ key, ref }];
  });
  const inOrder = inCourseOrder(course);
  refs.sort((a, b) => inOrder(a.ref, b.ref));
  const chapters = new Map<string, ChapterPlaces['places'][number][]>();
  for (const { key, ref } of refs) {
    const move = nodeAt(course, ref)?.move;
    const name = names.get(key)?.[0];
    const place = {
      ref,
      move: move ? numberedMove(move, strings) : strings.startPosition,
      ...(name !== undefined && { name }),
    };
    const there = chapters.get(ref.chapter);
    if (there) there.push(place);
    else chapters.set(ref.chapter, [place]);
  }
  return [...chapters].map(([chapter, places]) => {
    const title = chapterAt(course, { chapter })?.title ?? '';
    return { lead: chapter === here ? strings.patternHere : strings.patternThere(title), places };
  });
}
