import type { PatternBlock } from '../model/index.ts';
import type { Edition } from './edition.ts';
import type { PatternChange } from './types.ts';

/** A pattern is the same under its title or, with another title, by its pieces. */
export function findPatternChanges(old: Edition, now: Edition): PatternChange[] {
  const before = patternsOf(old);
  const after = patternsOf(now);
  const left = new Set(before);
  const take = (test: (block: PatternBlock) => boolean) => {
    const found = [...left].find(test);
    if (found) left.delete(found);
    return found;
  };
  const others: PatternBlock[] = [];
  const changes = after.flatMap((block): PatternChange[] => {
    const was = take((other) => pieces(other) === pieces(block));
    if (was === undefined) others.push(block);
    return was && says(was) !== says(block) ? [describe('said', block, now)] : [];
  });
  for (const block of others) {
    const was = take(({ title }) => title === block.title);
    changes.push(describe(was ? 'changed' : 'new', block, now));
  }
  return [...changes, ...[...left].map((block) => describe('dropped', block, old))];
}

function describe(
  what: PatternChange['what'],
  { title, chapter, key }: PatternBlock,
  edition: Edition,
): PatternChange {
  return { kind: 'pattern', what, title, at: edition.place({ chapter, block: key, node: 0 }) };
}

function patternsOf({ course }: Edition): PatternBlock[] {
  return course.chapters.flatMap(({ blocks }) =>
    blocks.filter((block) => block.kind === 'pattern'),
  );
}

function pieces({ placement, empty, reversed }: PatternBlock): string {
  return JSON.stringify([placement, [...empty].sort(), reversed]);
}

/** What holds wherever it stands; other words in its text are no change. */
function says({ advice, claims }: PatternBlock): string {
  return JSON.stringify([advice.map(({ san }) => san), claims.map(({ argument }) => argument)]);
}
