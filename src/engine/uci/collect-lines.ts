import type { Score } from '../../facts/index.ts';
import type { UciInfo } from './parse-line.ts';

/** The best lines of the last depth that a search finished; moves in UCI notation. */
export interface SearchResult {
  readonly depth: number;
  readonly lines: readonly { readonly score: Score; readonly moves: readonly string[] }[];
}

/** What a search has told. */
export interface LineCollector {
  readonly add: (info: UciInfo) => void;
  /** Nothing where it gave no value, or only bounds. */
  readonly result: () => SearchResult | undefined;
  /** Whether a move began one of its lines, values or bounds. */
  readonly named: (move: string) => boolean;
  /** The most positions it says it looked at; nothing where it does not say. */
  readonly nodes: () => number | undefined;
}

/**
 * Collects the lines of one search. Only those of one depth can be compared, so the deepest counts for which there
 * are as many lines as there ever were: a search that is cut off tells some lines of its last depth and not others.
 */
export function createLineCollector(): LineCollector {
  const depths = new Map<number, Map<number, SearchResult['lines'][number]>>();
  const firsts = new Set<string>();
  let nodes: number | undefined;
  return {
    add({ depth = 0, rank, score, isBound, moves, nodes: looked }) {
      if (looked !== undefined) nodes = Math.max(nodes ?? 0, looked);
      const [first] = moves;
      if (first !== undefined) firsts.add(first);
      if (score === undefined || isBound || first === undefined) return;
      const lines = depths.get(depth) ?? new Map<number, SearchResult['lines'][number]>();
      depths.set(depth, lines);
      lines.set(rank, { score, moves });
    },
    result() {
      const most = Math.max(0, ...[...depths.values()].map(({ size }) => size));
      const whole = [...depths].filter(([, { size }]) => size === most);
      if (most === 0) return undefined;
      const [depth, lines] = whole.reduce((a, b) => (b[0] > a[0] ? b : a));
      const ranks = [...lines.keys()].sort((a, b) => a - b);
      return { depth, lines: ranks.flatMap((rank) => lines.get(rank) ?? []) };
    },
    named: (move) => firsts.has(move),
    nodes: () => nodes,
  };
}
