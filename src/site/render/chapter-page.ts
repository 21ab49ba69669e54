import type { Root } from 'hast';
import { describePosition, sideToMove } from '../../chess/index.ts';
import { drawBoardInPage } from '../../draw/index.ts';
import type { Chapter } from '../../model/index.ts';
import {
  assignAddresses,
  chapterDocument,
  chaptersMet,
  type PartMaker,
  pageMedium,
  type RenderContext,
  resolve,
  writeHtml,
} from '../../render/index.ts';
import type { Strings } from '../../strings/index.ts';
import type { DocumentText } from '../site-data.ts';
import { firstExercise, sectionsOf } from './sections.ts';

/** What the page of a chapter, or of one of the author's, shows below its title. */
export const pagePart: PartMaker<DocumentText> = {
  kind: 'page',
  inputs: '',
  make: (context) => chapterPage(context),
};

/** @param change applied to the text before it becomes HTML; it owns its elements. */
export function chapterPage(context: RenderContext, change?: (tree: Root) => void) {
  const { ask, chapter, strings } = context;
  const addresses = assignAddresses(ask);
  const board = readingBoard(chapter, strings);
  const page = { ...pageMedium(addresses, chapter.file), isWritten: change === undefined };
  const tree = resolve(chapterDocument(context), page, strings);
  const exercise = firstExercise(tree);
  change?.(tree);
  return {
    html: writeHtml(tree.children),
    ...(board !== undefined && { board }),
    sections: sectionsOf(tree),
    ...(exercise !== undefined && { exercise }),
    met: chaptersMet(context, addresses),
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
