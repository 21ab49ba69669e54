import type { Element } from 'hast';
import { describePosition, sideToMove } from '../chess/index.ts';
import {
  type Course,
  chapterAt,
  type GameBlock,
  type MovesBlock,
  mainLine,
} from '../model/index.ts';
import { element, type Medium, numberedMove } from '../site/render/index.ts';
import { stringsFor } from '../strings/index.ts';

/**
 * The position that moves end with, for readers who cannot play them through. Where the next block
 * shows that very position there is none.
 */
export function lastBoard(
  course: Course,
  board: Medium['board'],
): (block: MovesBlock | GameBlock) => Element[] {
  const strings = stringsFor(course.settings.language);
  return (block) => {
    const line = mainLine(block.nodes);
    const last =
      block.kind === 'game' ? block.nodes[block.last] : line.findLast((node) => node.position);
    const { position, move } = last ?? {};
    if (last === undefined || position === undefined || move === undefined) return [];
    const { blocks = [] } = chapterAt(course, block) ?? {};
    const next = blocks[blocks.findIndex(({ key }) => key === block.key) + 1];
    const shown = next?.kind === 'diagram' || next?.kind === 'exercise' ? next.position : undefined;
    if (shown?.key === position.key) return [];
    const turn = sideToMove(position);
    const title = strings.book.boardAfter(numberedMove(move, strings));
    const picture = board({
      placement: position.fen,
      view: block.view,
      marks: last.marks,
      arrows: last.arrows,
      lastMove: move,
      turn,
      title,
      desc: describePosition(position, strings.position),
    });
    return [
      element('figure', { className: ['diagram', 'last'] }, [
        element('div', { className: ['still'] }, [picture]),
        element('figcaption', {}, [
          `${title}. `,
          element('span', { className: ['to-move'] }, [strings.toMove[turn]]),
        ]),
      ]),
    ];
  };
}
