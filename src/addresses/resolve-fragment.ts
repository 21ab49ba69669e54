import { readEarlierAddress, readPositionAddress, sanInEarlierAddress } from '../contract/index.ts';
import type { Chapter } from '../model/index.ts';
import { chapterIds } from './chapter-ids.ts';
import { namedIds } from './named-ids.ts';
import { shownNodes } from './shown-nodes.ts';

/**
 * The id that a link's `#…` leads to on a chapter's page: the same, or where the page shows that position
 * now. Nothing where the page has no such place. The browser answers in the same way
 * (`browser/lost-address/find-address.ts`), but knows the page alone.
 * @param fragment decoded, without `#`.
 */
export function resolveFragment(chapter: Chapter, fragment: string): string | undefined {
  const ids = chapterIds(chapter);
  if (ids.has(fragment) || isNote(fragment)) return fragment;
  const addressed = readPositionAddress(fragment);
  if (addressed !== undefined) return ids.positions.get(addressed.plain);
  if (namedIds(chapter).inHtml.includes(fragment)) return fragment;
  return findEarlier(chapter, fragment);
}

/** The ids of notes, which the renderer of Markdown gives. */
export function isNote(fragment: string): boolean {
  return /^note-fn(?:ref)?-/.test(fragment);
}

/** The ids of earlier editions, exactly: the block with that number has that move. */
function findEarlier(chapter: Chapter, fragment: string): string | undefined {
  const earlier = readEarlierAddress(fragment);
  const block = earlier && chapter.blocks[earlier.block - 1];
  if (earlier === undefined || block === undefined) return undefined;
  const ids = chapterIds(chapter);
  const { move } = earlier;
  if (move === undefined) return ids.ofNode(block, 0);
  const found = shownNodes(block).find(
    ({ move: made }) =>
      made?.number === move.number &&
      made.color === move.color &&
      sanInEarlierAddress(made.san) === move.san,
  );
  return found && ids.ofNode(block, found.index);
}
