import type { Course, Learn, MovesBlock } from '../types.ts';
import { adviceOf, isAside } from './advice.ts';
import { blockAt, chapterAt } from './node-at.ts';
import { positionsBefore } from './positions-before.ts';

/** What practice does with the positions of a course, by their keys. */
export interface Practised {
  /** Where the course advises a move that is asked. */
  readonly asked: ReadonlySet<string>;
  /**
   * Positions that stand only at or behind an option or a bad move of the course's side, or for reference: a line of
   * practice keeps away from them, unless it leads to what is asked.
   */
  readonly aside: ReadonlySet<string>;
}

/**
 * What practice asks of a course: its advice, but for what `learn` leaves out and for what comes before the position
 * that the setting `begins` names. A position is asked if it is in any of the places that advise its move.
 */
export function practisedIn(course: Course): Practised {
  const learn = learnInCourse(course);
  const before = positionsBefore(course);
  const asked = new Set<string>();
  for (const [key, advice] of adviceOf(course)) {
    if (before.has(key)) continue;
    const isAsked = advice.some(({ ref }) => {
      const block = blockAt(course, ref);
      return block?.kind === 'moves' && learn(block)[ref.node] !== 'none';
    });
    if (isAsked) asked.add(key);
  }
  const aside = new Set<string>();
  for (const { key, at } of Object.values(course.graph)) {
    const isTaught = at.some((ref) => {
      const block = blockAt(course, ref);
      return (
        block?.kind === 'moves' &&
        learn(block)[ref.node] !== 'none' &&
        !isAside(course, block, ref.node)
      );
    });
    if (!isTaught) aside.add(key);
  }
  return { asked, aside };
}

/** What practice asks of the nodes of a block, by index: `main` for those of a main line without its variations. */
function learnInCourse(course: Course): (block: MovesBlock) => readonly Learn[] {
  const found = new Map<MovesBlock, readonly Learn[]>();
  const learnIn = (block: MovesBlock): readonly Learn[] => {
    const known = found.get(block);
    if (known) return known;
    // A circle of blocks has a finding of its own.
    found.set(block, []);
    const learn = spread(block, startOf(block));
    found.set(block, learn);
    return learn;
  };
  /** Of the block, else of its chapter, else of the position that it starts from. */
  const startOf = (block: MovesBlock): Learn => {
    const own = block.learn ?? chapterAt(course, block)?.learn;
    if (own !== undefined) return own;
    const ref = block.from && course.labels[block.from.name]?.ref;
    const from = ref && blockAt(course, ref);
    return (from?.kind === 'moves' && learnIn(from)[ref?.node ?? -1]) || 'all';
  };
  return learnIn;
}

function spread({ nodes }: MovesBlock, start: Learn): Learn[] {
  const learn: Learn[] = [];
  // Parents stand before their children.
  for (const { index, parent = -1, statements } of nodes) {
    const before = learn[parent] ?? start;
    const isVariation = parent >= 0 && nodes[parent]?.children[0] !== index;
    const own = statements.findLast(({ name }) => name === 'learn')?.argument;
    const taken = before === 'main' && isVariation ? 'none' : before;
    learn.push((own as Learn | undefined) ?? taken);
  }
  return learn;
}
