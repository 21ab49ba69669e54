import type { Course, Learn, NodeRef } from '../types.ts';
import { adviceOf, asideStarts } from './advice.ts';
import { chapterAt } from './node-at.ts';
import { type BlockOutline, outlinedBlockAt } from './outline.ts';
import { positionsBefore } from './positions-before.ts';

/** What practice does with the positions of a course, by position key. */
export interface Practised {
  /** Where the course advises a move that is asked. */
  readonly asked: ReadonlySet<string>;
  /**
   * Positions that occur only for reference, or at or behind an option or a bad move of the course's side. Practice
   * avoids them unless they lead to something that is asked.
   */
  readonly aside: ReadonlySet<string>;
}

/**
 * What practice asks: all advice, except for what `learn` excludes and what comes before the position that `begins`
 * names. A position is asked if any place that advises its move asks it.
 */
export function practisedIn(course: Course): Practised {
  const learn = learnInCourse(course);
  const startsAside = asideStarts(course);
  const before = positionsBefore(course);
  const isLearnt = (ref: NodeRef) => {
    const there = outlinedBlockAt(course, ref);
    return there !== undefined && learn(there.block, ref)[ref.node] !== 'none';
  };
  const isAside = (ref: NodeRef) => {
    const there = outlinedBlockAt(course, ref);
    return there?.nodes[ref.node]?.aside || (there && startsAside(there.block));
  };
  const asked = new Set<string>();
  for (const [key, advice] of adviceOf(course)) {
    if (!before.has(key) && advice.some(({ ref }) => isLearnt(ref))) asked.add(key);
  }
  const aside = new Set<string>();
  for (const { key, at } of Object.values(course.graph)) {
    if (!at.some((ref) => isLearnt(ref) && !isAside(ref))) aside.add(key);
  }
  return { asked, aside };
}

type At = Pick<NodeRef, 'chapter'>;

/** What practice asks of the nodes of a block, by index; `main` for the nodes of a main line. */
function learnInCourse(course: Course): (block: BlockOutline, at: At) => readonly Learn[] {
  const found = new Map<BlockOutline, readonly Learn[]>();
  const learnIn = (block: BlockOutline, at: At): readonly Learn[] => {
    const known = found.get(block);
    if (known) return known;
    // A circle of blocks has a finding of its own.
    found.set(block, []);
    const learn = spread(block, startOf(block, at));
    found.set(block, learn);
    return learn;
  };
  /** The setting of the block, else of its chapter, else of the position that it starts from. */
  const startOf = (block: BlockOutline, at: At): Learn => {
    const own = block.learn ?? chapterAt(course, at)?.learn;
    if (own !== undefined) return own;
    const ref = block.from === undefined ? undefined : course.labels[block.from]?.ref;
    const from = ref && outlinedBlockAt(course, ref);
    return (from && learnIn(from.block, ref)[ref.node]) || 'all';
  };
  return learnIn;
}

function spread({ nodes }: BlockOutline, start: Learn): Learn[] {
  const learn: Learn[] = [];
  const begun = new Set<number>();
  // Parents stand before their children, and the main line before its variations.
  for (const { index, parent = -1, learn: own, varies } of nodes) {
    const before = learn[parent] ?? start;
    const isVariation = parent >= 0 && (begun.has(parent) || varies);
    begun.add(parent);
    learn[index] = own ?? (before === 'main' && isVariation ? 'none' : before);
  }
  return learn;
}
