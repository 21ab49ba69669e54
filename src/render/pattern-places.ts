import { chapterAt, inCourseOrder, type NodeRef, type PatternMatch } from '../model/index.ts';
import { nodeAt, type SharedContext } from './context.ts';
import type { ChapterPlaces, PatternPlace } from './document.ts';
import { numberedMove } from './notation.ts';
import { titlesByKey } from './titles-by-key.ts';

/**
 * The positions that have a pattern: each once, in the chapter that the reader is in if it stands there, else
 * where it stands first. Positions that follow one another in a line are one place, but a title begins a new
 * one. `here` is the file of that chapter; absent on a page that is none.
 */
export function patternPlaces(
  context: SharedContext,
  matches: readonly PatternMatch[],
  here: string | undefined,
): ChapterPlaces[] {
  const { course, strings } = context;
  const chapters = new Map<string, PatternPlace[]>();
  for (const run of runsOf(context, refsOf(context, matches, here))) {
    const there = chapters.get(run.ref.chapter);
    if (there) there.push(run);
    else chapters.set(run.ref.chapter, [run]);
  }
  return [...chapters].map(([chapter, places]) => {
    const title = chapterAt(course, { chapter })?.title ?? '';
    return { lead: chapter === here ? strings.patternHere : strings.patternThere(title), places };
  });
}

interface Match {
  readonly key: string;
  readonly ref: NodeRef;
}

/** In the order of the course. */
function refsOf(
  { course }: SharedContext,
  matches: readonly PatternMatch[],
  here?: string,
): Match[] {
  const inOrder = inCourseOrder(course);
  return matches
    .flatMap(({ key }) => {
      const at = course.graph[key]?.at ?? [];
      const ref = at.find((place) => place.chapter === here) ?? at[0];
      return ref === undefined ? [] : [{ key, ref }];
    })
    .sort((a, b) => inOrder(a.ref, b.ref));
}

function runsOf({ course, strings }: SharedContext, matches: readonly Match[]): PatternPlace[] {
  const titles = titlesByKey(course);
  const runs: { place: PatternPlace; end: string }[] = [];
  const byEnd = new Map<string, (typeof runs)[number]>();
  for (const { key, ref } of matches) {
    const { move, parent } = nodeAt(course, ref) ?? {};
    const title = titles.get(key);
    const words = move ? numberedMove(move, strings) : strings.startPosition;
    const end = nameOf(ref, ref.node);
    const before = parent === undefined ? undefined : byEnd.get(nameOf(ref, parent));
    if (before?.place.isMove && title === undefined) {
      byEnd.delete(before.end);
      before.place = { ...before.place, last: words, count: before.place.count + 1 };
      before.end = end;
      byEnd.set(end, before);
    } else {
      const place = {
        ref,
        move: words,
        isMove: move !== undefined,
        count: 1,
        ...(title !== undefined && { title }),
      };
      const run = { place, end };
      runs.push(run);
      byEnd.set(end, run);
    }
  }
  return runs.map(({ place }) => place);
}

function nameOf({ chapter, block }: NodeRef, node: number): string {
  return `${chapter} ${block} ${node}`;
}
