import { inCourseOrder, type PatternMatch } from '../../model/index.ts';
import { nodeAt, type SharedContext } from './context.ts';
import { namesByKey } from './names-by-key.ts';
import { numberedMove } from './notation.ts';

/** A position that has the pattern. */
export interface PatternPlace {
  readonly href: string;
  /** The move that leads to it, `9...cxd4`. */
  readonly words: string;
  /** Its first name, where it has one. */
  readonly name?: string;
}

/** Those of one chapter, in the order of its text. */
export interface PatternPlaces {
  /** The chapter's file. */
  readonly chapter: string;
  readonly places: readonly PatternPlace[];
}

/**
 * Each position once, in the chapter that the reader is in if it stands there, else where it stands
 * first. `here` is that chapter; absent on a page that is none.
 */
export function patternPlaces(
  context: SharedContext,
  matches: readonly PatternMatch[],
  here: string | undefined,
): PatternPlaces[] {
  const { course, addresses, strings } = context;
  const names = namesByKey(context.course);
  const refs = matches.flatMap(({ key }) => {
    const at = course.graph[key]?.at ?? [];
    const ref = at.find((place) => place.chapter === here) ?? at[0];
    return ref === undefined ? [] : [{ key, ref }];
  });
  const inOrder = inCourseOrder(course);
  refs.sort((a, b) => inOrder(a.ref, b.ref));
  const chapters = new Map<string, PatternPlace[]>();
  for (const { key, ref } of refs) {
    const move = nodeAt(course, ref)?.move;
    const name = names.get(key)?.[0];
    const place = {
      href: addresses.href(ref, here),
      words: move ? numberedMove(move, strings) : strings.startPosition,
      ...(name !== undefined && { name }),
    };
    const there = chapters.get(ref.chapter);
    if (there) there.push(place);
    else chapters.set(ref.chapter, [place]);
  }
  return [...chapters].map(([chapter, places]) => ({ chapter, places }));
}
