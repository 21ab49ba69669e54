import { toString as plainText } from 'mdast-util-to-string';
import { sideToMove } from '../../chess/index.ts';
import { drawBoardInPage } from '../../draw/index.ts';
import type { Course } from '../../model/index.ts';
import {
  assignAddresses,
  exerciseNumber,
  type PartMaker,
  type Parts,
  tidySpaces,
} from '../../render/index.ts';
import type { ChapterExercises } from '../site-data.ts';

/** All exercises of the course, chapter by chapter. */
export function exerciseEntries({ chapters }: Course, parts: Parts): ChapterExercises[] {
  return chapters.flatMap((chapter) => {
    const entries = parts.of(entriesPart, chapter);
    if (entries.length === 0) return [];
    return [{ chapter: chapter.title, page: `${chapter.id}.html`, entries }];
  });
}

/** The exercises of a chapter, as the page of all exercises shows them. */
export const entriesPart: PartMaker<ChapterExercises['entries']> = {
  kind: 'exercise-entries',
  inputs: '',
  make({ chapter, ask, strings }) {
    const addresses = assignAddresses(ask);
    return chapter.blocks.flatMap((block) => {
      if (block.kind !== 'exercise' || block.position === undefined) return [];
      const { position, view, lastMove } = block;
      const turn = sideToMove(position);
      const board = drawBoardInPage({
        placement: position.fen,
        view,
        turn,
        lastMove,
        coordinates: false,
      });
      const ref = { chapter: chapter.file, block: block.key, node: 0 };
      return [
        {
          title: strings.exerciseNumber(exerciseNumber(chapter, block)),
          href: addresses.href(ref),
          key: position.key,
          board,
          ask: `${plainText(tidySpaces(block.ask))} ${strings.toMove[turn]}.`,
        },
      ];
    });
  },
};
