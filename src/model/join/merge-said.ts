import type { SaidElsewhere } from '../play/work.ts';
import type { Block, Chapter, MoveNode } from '../types.ts';

/** Adds to a chapter what other chapters say of its positions; returns the same object if they say nothing. */
export function mergeSaid(chapter: Chapter, said: readonly SaidElsewhere[]): Chapter {
  if (said.length === 0) return chapter;
  const byBlock = new Map<string, SaidElsewhere[]>();
  for (const one of said) {
    const there = byBlock.get(one.ref.block);
    if (there) there.push(one);
    else byBlock.set(one.ref.block, [one]);
  }
  const blocks = chapter.blocks.map((block): Block => {
    const there = byBlock.get(block.key);
    return there ? ({ ...block, nodes: withSaid(block.nodes, there) } as Block) : block;
  });
  return Object.defineProperties({} as Chapter, {
    // Descriptors, not values: a late body stays late.
    ...Object.getOwnPropertyDescriptors(chapter),
    blocks: { value: blocks, enumerable: true },
  });
}

function withSaid(nodes: readonly MoveNode[], said: readonly SaidElsewhere[]): MoveNode[] {
  const changed = [...nodes];
  for (const { ref, label, marks = [], arrows = [], statement } of said) {
    const node = changed[ref.node];
    if (!node) continue;
    changed[ref.node] = {
      ...node,
      labels: label === undefined ? node.labels : [...node.labels, label],
      marks: [...node.marks, ...marks],
      arrows: [...node.arrows, ...arrows],
      statements: statement === undefined ? node.statements : [...node.statements, statement],
    };
  }
  return changed;
}
