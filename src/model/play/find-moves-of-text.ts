import type { ProseMovesNode } from '../../read/index.ts';
import { placeOfNode } from '../place-of-node.ts';
import { findProseMoves } from './find-moves.ts';
import { playBlock } from './play-block.ts';
import { reportIn } from './report.ts';
import type { BlockInWork, ChapterInWork, CourseInWork } from './work.ts';

/** Where a text is that mentions moves. */
export interface TextPlace {
  readonly chapter: ChapterInWork;
  /** The index of the last block before it, or of the block that contains it; -1 for none. */
  readonly last: number;
  /** The node whose comment it is. */
  readonly own?: number | undefined;
}

/**
 * Finds the moves that a text mentions and records them in `spoken`. Searches back from the last block to the
 * chapter's first, then the blocks behind, for texts that give an overview.
 * @returns false if a block could not be searched because it is being played.
 */
export function findMovesOfText(
  { id, moves, ...node }: ProseMovesNode,
  { chapter, last, own }: TextPlace,
  course: CourseInWork,
): boolean {
  const { budget, spoken } = chapter;
  let isSure = true;
  let found: { block: BlockInWork; run: number[] } | undefined;
  for (const index of orderOf(last, chapter.blocks.length)) {
    if (budget.left <= 0) break;
    const block = chapter.blocks[index];
    if (block?.syntax.kind !== 'moves' && block?.syntax.kind !== 'game') continue;
    if (!playBlock(block, course)) {
      isSure = false;
      continue;
    }
    const { nodes } = block.tree;
    const at = own !== undefined && index === last ? { at: own } : {};
    const run = findProseMoves(moves, { nodes, ...at }, budget);
    if (run.length > (found?.run.length ?? 0)) found = { block, run };
    if (run.length === moves.length) break;
  }
  const earlier = spoken.moves[id] ?? [];
  spoken.moves[id] = moves.map((_, index) => {
    const target = found?.run[index];
    if (!found || target === undefined) return earlier[index] ?? null;
    return { chapter: chapter.syntax.file, block: found.block.syntax.key, node: target };
  });
  if (budget.left <= 0 && found?.run.length !== moves.length) {
    if (spoken.unsought.length === 0) {
      reportIn(chapter)(
        placeOfNode({ ...node, id, moves }, chapter.syntax.file),
        `From here on the moves in the texts are not looked for: more than ${course.limits.places.toLocaleString('en')} places have been looked at.`,
        'Divide the chapter into several; write moves that are in no block without their number.',
      );
    }
    spoken.unsought.push(id);
  }
  return isSure;
}

/** Block indices in the order of the search: nearest earlier block to first, then the later ones. */
function* orderOf(last: number, count: number): Generator<number> {
  for (let index = last; index >= 0; index--) yield index;
  for (let index = last + 1; index < count; index++) yield index;
}
