import type { Block } from '../../model/index.ts';
import type { PartMaker } from '../../render/index.ts';

/** The kinds of blocks that a chapter has. */
export const kindsPart: PartMaker<readonly Block['kind'][]> = {
  kind: 'kinds',
  inputs: '',
  make: ({ chapter }) => [...new Set(chapter.blocks.map(({ kind }) => kind))],
};
