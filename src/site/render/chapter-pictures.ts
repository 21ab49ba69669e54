import type { BoardPicture } from '../../draw/index.ts';
import { diagramNames, emblematic, type PartMaker, pictureOf } from '../../render/index.ts';

/** What a chapter's pictures show. */
export interface ChapterPictures {
  /** On its card; absent where it shows no position. */
  readonly emblem?: Pick<BoardPicture, 'placement' | 'view'>;
  readonly diagrams: readonly (readonly [name: string, picture: BoardPicture])[];
}

export const picturesPart: PartMaker<ChapterPictures> = {
  kind: 'pictures',
  inputs: '',
  make({ chapter }) {
    const shown = emblematic(chapter);
    const names = diagramNames(chapter);
    return {
      ...(shown && { emblem: { placement: shown.position.fen, view: shown.block.view } }),
      diagrams: chapter.blocks.flatMap((block) => {
        const name = names.get(block.key);
        const picture = block.kind === 'diagram' ? pictureOf(block) : undefined;
        return name === undefined || picture === undefined ? [] : [[name, picture] as const];
      }),
    };
  },
};
