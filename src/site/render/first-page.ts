import { repeatedTitle } from '../../addresses/index.ts';
import { describePosition, sideToMove } from '../../chess/index.ts';
import { drawBoardInPage } from '../../draw/index.ts';
import { type Chapter, minutesToRead } from '../../model/index.ts';
import { askOf, coverPosition, type PartMaker, positionInWords } from '../../render/index.ts';
import type { ChapterWork, KeyPosition } from '../site-data.ts';
import type { SiteContext } from './site-context.ts';

/** The position on the first page, as it stands before anything is played. */
export function keyPosition({ course, addresses, strings }: SiteContext): KeyPosition | undefined {
  const cover = coverPosition(course);
  if (cover === undefined) return undefined;
  const { position, view, ref, lastMove } = cover;
  return {
    board: drawBoardInPage({
      placement: position.fen,
      view,
      lastMove,
      turn: sideToMove(position),
      desc: describePosition(position, strings.position),
    }),
    key: position.key,
    view,
    last: lastMove && `${lastMove.from}${lastMove.to}`,
    title: cover.title,
    words: course.graph[position.key] && positionInWords(askOf(course), ref, strings, ref.chapter),
    href: addresses.href(ref),
  };
}

export const workPart: PartMaker<ChapterWork> = {
  kind: 'work',
  inputs: '',
  make: ({ chapter }) => ({
    minutes: minutesToRead(chapter),
    sections: sectionsIn(chapter),
    exercises: chapter.blocks.filter(({ kind }) => kind === 'exercise').length,
  }),
};

/** How many headings of the second level its page has; the chapter's title is the first. */
function sectionsIn(chapter: Chapter): number {
  const title = repeatedTitle(chapter);
  const depths = chapter.body.children.flatMap((node) =>
    node.type === 'heading' && node !== title ? [node.depth] : [],
  );
  const second = depths.includes(1) ? 1 : 2;
  return depths.filter((depth) => depth === second).length;
}
