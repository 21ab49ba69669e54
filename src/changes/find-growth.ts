import type { NodeRef } from '../model/index.ts';
import type { Edition } from './edition.ts';

/** Moves that one edition has and another has not, told at the first of them. */
export interface Growth {
  /** The position that the other edition has too, and the move from there; absent for a new start. */
  readonly from?: { readonly key: string; readonly san: string };
  /** Where the moves stand in the edition that has them. */
  readonly ref: NodeRef;
  /** Positions behind it that the other edition has not; each is counted once in all. */
  readonly positions: number;
}

/** Finds what `edition` has and `other` has not, in the order of the course. */
export function findGrowth(edition: Edition, other: Edition): Growth[] {
  const { graph, course } = edition;
  const counted = new Set<string>();
  const countFrom = (first: string): number => {
    const before = counted.size;
    const open = [first];
    for (let key = open.pop(); key !== undefined; key = open.pop()) {
      if (other.graph[key] || counted.has(key)) continue;
      counted.add(key);
      for (const { to } of graph[key]?.moves ?? []) open.push(to);
    }
    return counted.size - before;
  };
  const grown = Object.values(graph)
    .filter(({ key }) => other.graph[key])
    .flatMap(({ key, moves }) => {
      const known = new Set(other.graph[key]?.moves.map(({ san }) => san));
      return moves.filter(({ san }) => !known.has(san)).map((move) => ({ key, move }));
    })
    .flatMap(({ key, move: { san, to, at } }): Growth[] => {
      const [ref] = at;
      return ref ? [{ from: { key, san }, ref, positions: countFrom(to) }] : [];
    });
  const started = course.chapters.flatMap((chapter) =>
    chapter.blocks.flatMap((block): Growth[] => {
      const key = block.kind === 'moves' ? block.nodes[0]?.position?.key : undefined;
      const positions = key === undefined ? 0 : countFrom(key);
      if (positions === 0) return [];
      return [{ ref: { chapter: chapter.file, block: block.key, node: 0 }, positions }];
    }),
  );
  return [...grown, ...started];
}
