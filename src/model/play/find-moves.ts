import { plainSpelling } from '../../chess/index.ts';
import type { ProseMove } from '../../read/index.ts';
import { createLineTest, type LineTest } from './line-test.ts';
import type { NodeInWork } from './work.ts';

/** A played block to search, and the node whose comment the text is, if any. */
export interface ProseScope {
  readonly nodes: readonly NodeInWork[];
  readonly at?: number;
}

/** How many more nodes may be compared with moves that the texts mention. */
export interface ProseBudget {
  left: number;
}

/**
 * Finds a run of mentioned moves in a block. Of several matches it takes the longest, then the one on the comment's own
 * line, then the least nested.
 * @returns the node of each move, as far as the run can be followed.
 */
export function findProseMoves(
  moves: readonly ProseMove[],
  { nodes, at }: ProseScope,
  budget: ProseBudget,
): number[] {
  const [first, ...rest] = moves;
  if (!first) return [];
  const { placesOf, isOwn } = indexOf(nodes);
  let best: { run: number[]; rank: number } | undefined;
  budget.left--;
  for (const node of placesOf(first)) {
    const run = [node.index];
    let last = node;
    for (const move of rest) {
      budget.left -= last.children.length;
      const next = last.children
        .map((index) => nodes[index])
        .find((child) => child && isMove(child, move));
      if (!next) break;
      run.push(next.index);
      last = next;
    }
    budget.left--;
    const own = at !== undefined && isOwn(at, node.index) ? 500 : 0;
    const rank = run.length * 1000 - node.depth + own;
    if (!best || rank > best.rank) best = { run, rank };
    if (budget.left <= 0) break;
  }
  return best?.run ?? [];
}

interface Index {
  /** Candidate nodes for a move, in the order of the block. */
  readonly placesOf: (move: ProseMove) => readonly NodeInWork[];
  readonly isOwn: LineTest;
}

const indexes = new WeakMap<readonly NodeInWork[], Index>();

function indexOf(nodes: readonly NodeInWork[]): Index {
  const known = indexes.get(nodes) ?? createIndex(nodes);
  indexes.set(nodes, known);
  return known;
}

function createIndex(nodes: readonly NodeInWork[]): Index {
  const places = new Map<string, NodeInWork[]>();
  for (const node of nodes) {
    for (const name of namesOf(node)) {
      const list = places.get(name);
      if (list) list.push(node);
      else places.set(name, [node]);
    }
  }
  return {
    placesOf({ san, number, color }) {
      const playable = places.get(nameOf(san, number, color)) ?? [];
      const others = places.get(bareSan(san));
      if (others === undefined) return playable;
      return [...playable, ...others].sort((a, b) => a.index - b.index);
    },
    isOwn: createLineTest(nodes),
  };
}

/** The spellings by which a text can mention a node. */
function namesOf({ move, written, fault }: NodeInWork): Iterable<string> {
  // An unplayable move has a finding of its own, so a mention of it needs none.
  if (!move) return fault && written ? [bareSan(written.san)] : [];
  const { san, number, color } = move;
  return new Set([san, written?.san ?? san].map((text) => nameOf(text, number, color)));
}

function nameOf(san: string, number: number, color: ProseMove['color']): string {
  return `${number} ${color} ${bareSan(san)}`;
}

function isMove(node: NodeInWork, { san, number, color }: ProseMove): boolean {
  const wanted = node.move ? nameOf(san, number, color) : bareSan(san);
  for (const name of namesOf(node)) if (name === wanted) return true;
  return false;
}

/** SAN without signs that only comment on the move, and with letters for figurines. */
export function bareSan(san: string): string {
  return plainSpelling(san)
    .replace(/[+#x=]/g, '')
    .replace(/0/g, 'O');
}
