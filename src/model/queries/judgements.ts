import { type Place, pointBehind } from '../../diagnostics/index.ts';
import { type JudgementText, readJudgement } from '../../read/index.ts';
import { placeOfNode } from '../place-of-node.ts';
import type { Chapter, NodeRef } from '../types.ts';
import { speaksOf } from './spoken-of.ts';
import { textNodes } from './walk-chapter.ts';

/** An author's judgement, which no board can prove: `:judge[…]`. */
export interface Judgement extends JudgementText {
  readonly place: Place;
  /** The place of the date, if there is one. */
  readonly datePlace?: Place;
  /** The position it speaks of; absent in patterns and in the lines of exercises, which have no address. */
  readonly of?: NodeRef;
}

/** Every judgement of a chapter, in the order of the text. */
export function judgementsOf(chapter: Chapter): Judgement[] {
  const found: Judgement[] = [];
  for (const node of textNodes(chapter, 'courseDirective')) {
    if (node.name !== 'judge') continue;
    const place = placeOfNode(node, chapter.file);
    const said = readJudgement(node.argument);
    const of = speaksOf(chapter, node);
    const { start } = node.argumentRange;
    const end =
      said.date === undefined || place.start.line !== place.end.line
        ? node.argumentRange.end
        : pointBehind(start, said.date.length);
    found.push({
      ...said,
      place,
      ...(said.date === undefined ? {} : { datePlace: { file: chapter.file, start, end } }),
      ...(of && { of }),
    });
  }
  return found;
}
