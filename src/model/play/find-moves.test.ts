import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runs } from '../../../tests/setup/runs.ts';
import type { ProseMove } from '../../read/index.ts';
import { findProseMoves } from './find-moves.ts';
import type { NodeInWork } from './work.ts';

/** Trees of few moves, so that the same ones come again in other lines. */
const tree = fc
  .array(
    fc.record({ up: fc.nat(), san: fc.constantFrom('Nf3', 'Nf6', 'e4', 'exd5+'), bad: fc.nat(9) }),
    {
      maxLength: 14,
    },
  )
  .map((steps) => {
    const root = { index: 0, depth: 0, children: [] } as unknown as NodeInWork;
    const nodes: NodeInWork[] = [root];
    for (const { up, san, bad } of steps) {
      const parent = nodes[up % nodes.length] ?? root;
      const ply = (parent as NodeInWork & { ply?: number }).ply ?? 0;
      const node = {
        index: nodes.length,
        parent: parent.index,
        depth: parent.depth + (parent.children.length > 0 ? 1 : 0),
        children: [],
        written: { san: san.replace('+', '') },
        ply: ply + 1,
        ...(bad === 0
          ? { fault: { kind: 'after-fault' } }
          : { move: { san, number: (ply >> 1) + 1, color: ply % 2 ? 'black' : 'white' } }),
      } as unknown as NodeInWork;
      (parent.children as number[]).push(node.index);
      nodes.push(node);
    }
    return nodes;
  });

const point = { line: 1, column: 1, offset: 0 };
const range = { start: point, end: point };

const mention = fc.array(
  fc.record({
    text: fc.constant(''),
    san: fc.constantFrom('Nf3', 'Nf6', 'e4', 'ed5', 'exd5'),
    number: fc.integer({ min: 1, max: 3 }),
    color: fc.constantFrom('white' as const, 'black' as const),
    range: fc.constant(range),
  }),
  { minLength: 1, maxLength: 3 },
);

/** The same by trying every node, and every node of the line. */
function byTryingAll(
  moves: readonly ProseMove[],
  nodes: readonly NodeInWork[],
  at?: number,
): number[] {
  const bare = (san = '') => san.replace(/[+#x=]/g, '');
  const isMove = ({ move, written, fault }: NodeInWork, { san, number, color }: ProseMove) =>
    move
      ? move.number === number &&
        move.color === color &&
        [move.san, written?.san].some((text) => bare(text) === bare(san))
      : fault !== undefined && bare(written?.san) === bare(san);
  const own = new Set<number>();
  for (let node = nodes[at ?? -1]; node; node = nodes[node.parent ?? -1]) own.add(node.index);
  for (let node = nodes[at ?? -1]; node; node = nodes[node.children[0] ?? -1]) own.add(node.index);
  let best: { run: number[]; rank: number } = { run: [], rank: Number.NEGATIVE_INFINITY };
  for (const node of nodes.slice(1)) {
    const run: number[] = [];
    for (let here: NodeInWork | undefined = node, index = 0; here && moves[index]; index++) {
      const wanted = moves[index] as ProseMove;
      const found: NodeInWork | undefined = index === 0 ? here : undefined;
      const next: NodeInWork | undefined =
        found ??
        here.children.map((child) => nodes[child]).find((child) => child && isMove(child, wanted));
      if (!next || !isMove(next, wanted)) break;
      run.push(next.index);
      here = next;
    }
    const rank = run.length * 1000 - node.depth + (own.has(node.index) ? 500 : 0);
    if (run.length > 0 && rank > best.rank) best = { run, rank };
  }
  return best.run;
}

test('the index finds what trying every move finds', () => {
  fc.assert(
    fc.property(tree, mention, fc.option(fc.nat(14)), (nodes, moves, at) => {
      const place = at !== null && at < nodes.length ? at : undefined;
      const scope = place === undefined ? { nodes } : { nodes, at: place };
      expect(findProseMoves(moves, scope, { left: 1000 })).toEqual(
        byTryingAll(moves, nodes, place),
      );
    }),
    { numRuns: runs(500) },
  );
});

test('it stops where nothing is left of the budget', () => {
  const root = { index: 0, depth: 0, children: [1, 2] } as unknown as NodeInWork;
  const child = (index: number) =>
    ({
      index,
      parent: 0,
      depth: index - 1,
      children: [],
      written: { san: 'e4' },
      move: { san: 'e4', number: 1, color: 'white' },
    }) as unknown as NodeInWork;
  const budget = { left: 2 };
  const move = { text: '1.e4', san: 'e4', number: 1, color: 'white', range } as const;
  expect(findProseMoves([move], { nodes: [root, child(1), child(2)], at: 2 }, budget)).toEqual([1]);
  expect(budget.left).toBe(0);
});
