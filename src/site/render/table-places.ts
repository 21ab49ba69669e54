import { chapterIds } from '../../addresses/index.ts';
import { tablePlace } from '../../lookup/index.ts';
import type { PartMaker } from '../../render/index.ts';

/** The ids of moves as the course's table has them, by the keys of blocks and the indices of nodes: without those that follow from positions. */
export type PlaceIds = Readonly<Record<string, Readonly<Record<number, string>>>>;

export const placesPart: PartMaker<PlaceIds> = {
  kind: 'places',
  inputs: '',
  make({ chapter }) {
    const ids = chapterIds(chapter);
    const found: Record<string, Record<number, string>> = {};
    for (const block of chapter.blocks) {
      if (block.kind !== 'moves') continue;
      const own: Record<number, string> = {};
      for (const { index, position } of block.nodes) {
        if (!position) continue;
        const [, id] = tablePlace(0, ids.ofNode(block, index), position.key);
        if (id !== undefined) own[index] = id;
      }
      if (Object.keys(own).length > 0) found[block.key] = own;
    }
    return found;
  },
};
