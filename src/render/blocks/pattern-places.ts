import type { NodeRef, PatternMatch } from '../../model/index.ts';
import type { AnswerTo } from '../ask/questions.ts';
import type { SharedContext } from '../context.ts';
import type { ChapterPlaces, PatternPlace } from '../document.ts';
import { numberedMove } from '../notation.ts';

/**
 * The positions that match a pattern, each once: in the reader's chapter if it occurs there, else at its first
 * occurrence. Positions that follow each other in a line are one place, unless a title begins a new one.
 * @param here the file of the reader's chapter; absent on other pages.
 */
export function patternPlaces(
  context: SharedContext,
  matches: readonly PatternMatch[],
  here: string | undefined,
): ChapterPlaces[] {
  const { ask, strings } = context;
  const keys = matches.map(({ key }) => key);
  const chapters = new Map<string, PatternPlace[]>();
  for (const run of runsOf(context, ask('places', { keys, here }))) {
    const there = chapters.get(run.ref.chapter);
    if (there) there.push(run);
    else chapters.set(run.ref.chapter, [run]);
  }
  return [...chapters].map(([chapter, places]) => {
    if (chapter === here) return { lead: strings.patternHere, places };
    return { lead: strings.patternThere(ask('chapter', chapter)?.title ?? ''), places };
  });
}

function runsOf({ ask, strings }: SharedContext, matches: AnswerTo<'places'>): PatternPlace[] {
  const runs: { place: PatternPlace; end: string }[] = [];
  const byEnd = new Map<string, (typeof runs)[number]>();
  for (const { key, ref, parent } of matches) {
    const move = ask('move', ref);
    const title = ask('title', key) ?? undefined;
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
        isMove: move !== null,
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
