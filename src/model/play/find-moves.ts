import { plainSpelling } from '../../chess/index.ts';
import type { ProseMove } from '../../read/index.ts';
import { createLineTest, type LineTest } from './line-test.ts';
import type { NodeInWork } from './work.ts';

/** One block to look in, which has been played, and the node that the text is a comment of, if it is. */
export interface ProseScope {
  readonly nodes: readonly NodeInWork[];
  readonly at?: number;
}

/** How many places may still be looked at for the moves that the texts of a course mention. */
export interface ProseBudget {
  left: number;
}

/**
 * Finds a run of moves that the text mentions in a block: the node of each move, as far as the
 * run can be followed. Of several places that fit the one nearest to the comment is taken (its
 * own line before other lines), else the least deep in variations.
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
  /** The nodes that may be a move, in the order of the block. */
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

/** What a node can be mentioned as. */
function namesOf({ move, written, fault }: NodeInWork): Iterable<string> {
  // A move that cannot be played has a finding of its own; the mention of it needs none.
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

/** Without what only comments on the move, and with the letter of a figurine. */
export function bareSan(san: string): string {
  return plainSpelling(san)
    .replace(/[+#x=]/g, '')
    .replace(/0/g, 'O');
}
