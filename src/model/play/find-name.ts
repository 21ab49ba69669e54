import type { DirectiveNode } from '../../read/index.ts';
import { findMovesOfText } from './find-moves-of-text.ts';
import { playBlock } from './play-block.ts';
import { orderShowing, type Showing } from './showing.ts';
import {
  type BlockInWork,
  type ChapterInWork,
  type CourseInWork,
  type ShownNode,
  shownIn,
} from './work.ts';

/** The block that a name depends on and that is being played right now. */
interface Circle {
  readonly circle: BlockInWork;
}

/** The node that a name stands for; undefined if nobody gives the name, or if no move is shown there. */
export function findName(
  name: string,
  asking: ChapterInWork,
  course: CourseInWork,
): ShownNode | Circle | undefined {
  asking.asked.add(name);
  const known = course.found.get(name);
  if (known) return known;
  const site = course.names.get(name);
  const shown = site && findSite(site, course);
  if (shown && !('circle' in shown)) course.found.set(name, shown);
  return shown;
}

function findSite(
  site: NonNullable<ReturnType<CourseInWork['names']['get']>>,
  course: CourseInWork,
): ShownNode | Circle | undefined {
  if ('given' in site) return site.given.ref && { ref: site.given.ref, given: site.given };
  if (site.at) return shownIn(site.at.block, site.at.node);
  // A name in prose or in a caption stands for the move shown last before it.
  if (site.within) {
    return playBlock(site.within, course) ? site.within.shows : { circle: site.within };
  }
  return shownBefore(site.directive, site.chapter, course);
}

/** The last move shown before a name in prose. */
function shownBefore(
  directive: DirectiveNode,
  chapter: ChapterInWork,
  course: CourseInWork,
): ShownNode | Circle | undefined {
  chapter.showing ??= orderShowing(chapter.syntax.body.children);
  const { all, before } = chapter.showing;
  // Remembered, so that the search for the next name does not repeat it.
  const passed: number[] = [];
  let isSure = true;
  let shown: ShownNode | undefined;
  for (let at = (before.get(directive) ?? 0) - 1; at >= 0 && !shown; at--) {
    const known = chapter.shownAt.get(at);
    if (known !== undefined) {
      shown = known ?? undefined;
      break;
    }
    passed.push(at);
    const { block: index, moves } = all[at] as Showing;
    if (moves) {
      isSure = findMovesOfText(moves, { chapter, last: index }, course) && isSure;
      shown = lastOf(chapter, moves.id, index);
    } else {
      const block = chapter.blocks[index];
      if (block && !playBlock(block, course)) return { circle: block };
      shown = block?.shows;
    }
  }
  if (isSure) for (const at of passed) chapter.shownAt.set(at, shown ?? null);
  return shown;
}

/**
 * The last move that a text mentions, if a block has it. A move found only in a later block does not count as shown.
 * @param last index of the last block before the text; -1 for none.
 */
export function lastOf(chapter: ChapterInWork, id: number, last: number): ShownNode | undefined {
  const ref = chapter.spoken.moves[id]?.at(-1);
  const block = ref ? chapter.byKey.get(ref.block) : undefined;
  return ref && block && block.index <= last ? shownIn(block, ref.node) : undefined;
}
