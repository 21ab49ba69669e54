import { positionAddress, readEarlierAddress, readPositionAddress } from '../contract/index.ts';
import type { Chapter } from '../model/index.ts';
import { namedIds } from './named-ids.ts';
import { isNote } from './resolve-fragment.ts';
import { shownNodes } from './shown-nodes.ts';

/** What links into a chapter may name, beside the positions of its `moves` blocks: plain data. */
export interface LinkTargets {
  readonly title: string;
  /** Headings, names and ids of the author's HTML. */
  readonly ids: readonly string[];
  /** The addresses of positions that games, diagrams and exercises show. */
  readonly shown: readonly string[];
  /** How many blocks it has. */
  readonly blocks: number;
}

export function linkTargets(chapter: Chapter): LinkTargets {
  const { names, headings, inHtml } = namedIds(chapter);
  const shown = chapter.blocks.flatMap((block) => {
    if (block.kind === 'moves') return [];
    const position = 'position' in block ? block.position : undefined;
    const keys = shownNodes(block).flatMap((node) => node.position?.key ?? []);
    return [...keys, ...(position ? [position.key] : [])].map(positionAddress);
  });
  return {
    title: chapter.title,
    ids: [...headings.values(), ...names.values(), ...inHtml],
    shown: [...new Set(shown)],
    blocks: chapter.blocks.length,
  };
}

/**
 * Whether the chapter's page answers a link's `#…`. `shows` tells whether its `moves` blocks show a position,
 * by `Position.key`.
 */
export function isTarget(
  fragment: string,
  { ids, shown, blocks }: LinkTargets,
  shows: (key: string) => boolean,
): boolean {
  if (ids.includes(fragment) || isNote(fragment)) return true;
  const addressed = readPositionAddress(fragment);
  if (addressed) return shows(addressed.key) || shown.includes(addressed.plain);
  const earlier = readEarlierAddress(fragment);
  // Such an address leads to the same move, or to one near it.
  return earlier !== undefined && earlier.block <= blocks;
}
