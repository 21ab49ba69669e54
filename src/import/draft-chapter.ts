import type { DraftBlock } from './write-blocks.ts';

/** A chapter in work: its blocks under their headings. */
export interface DraftChapter {
  readonly title: string;
  readonly blocks: { readonly heading: string; readonly text: string }[];
}

/** Adds the blocks of a game under one heading, which may be empty. */
export function addBlocks(
  chapter: DraftChapter,
  blocks: readonly DraftBlock[],
  heading: string,
): void {
  for (const [index, { text }] of blocks.entries()) {
    chapter.blocks.push({ heading: index === 0 ? heading : '', text });
  }
}
