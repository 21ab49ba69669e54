import { toHtml } from 'hast-util-to-html';
import { describePosition, sideToMove } from '../../chess/index.ts';
import { drawBoardInPage } from '../../draw/index.ts';
import type { Chapter } from '../../model/index.ts';
import { chapterDocument, chaptersMet, pageMedium, resolve } from '../../render/index.ts';
import type { Strings } from '../../strings/index.ts';
import type { ChapterHead, ChapterPage } from '../site-data.ts';
import type { SiteContext } from './site-context.ts';

/** What a chapter's page shows. */
export function chapterPage(
  context: SiteContext,
  chapter: Chapter,
  head: ChapterHead,
): ChapterPage {
  const { addresses, course, strings } = context;
  const board = readingBoard(chapter, strings);
  const page = pageMedium(addresses, chapter.file);
  const tree = resolve(chapterDocument({ ...context, chapter }), page, strings);
  return {
    ...head,
    html: toHtml(tree, { allowDangerousHtml: true }),
    ...(board !== undefined && { board }),
    met: chaptersMet(course, chapter, addresses),
  };
}

/** The board beside the text as it stands before anything is read. */
function readingBoard({ blocks }: Chapter, strings: Strings): string | undefined {
  const first = blocks.find((block) => block.kind === 'moves' || block.kind === 'game');
  const start = first?.nodes[0]?.position;
  if (first === undefined || start === undefined) return undefined;
  return drawBoardInPage({
    placement: start.fen,
    view: first.view,
    turn: sideToMove(start),
    desc: describePosition(start, strings.position),
  });
}
