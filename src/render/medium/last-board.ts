import type { Element } from 'hast';
import { describePosition, sideToMove } from '../../chess/index.ts';
import { type Chapter, type GameBlock, type MovesBlock, mainLine } from '../../model/index.ts';
import type { Strings } from '../../strings/index.ts';
import type { LastBoardNode } from '../document.ts';
import { element } from '../hast.ts';
import { numberedMove } from '../notation.ts';
import type { Medium } from './medium.ts';

/** The position that a block ends with; undefined if the next block shows the same. */
export function lastBoard(
  { blocks }: Chapter,
  block: MovesBlock | GameBlock,
  strings: Strings,
): LastBoardNode[] {
  const last =
    block.kind === 'game'
      ? block.nodes[block.last]
      : mainLine(block.nodes).findLast((node) => node.position);
  const { position, move } = last ?? {};
  if (last === undefined || position === undefined || move === undefined) return [];
  const next = blocks[blocks.findIndex(({ key }) => key === block.key) + 1];
  const shown = next?.kind === 'diagram' || next?.kind === 'exercise' ? next.position : undefined;
  if (shown?.key === position.key) return [];
  const turn = sideToMove(position);
  const picture = {
    placement: position.fen,
    view: block.view,
    marks: last.marks,
    arrows: last.arrows,
    lastMove: move,
    turn,
    title: strings.book.boardAfter(numberedMove(move, strings)),
    desc: describePosition(position, strings.position),
  };
  return [{ type: 'lastBoard', picture, turn }];
}

export function lastBoardFigure(
  { picture, turn }: LastBoardNode,
  board: Medium['board'],
  strings: Strings,
): Element {
  return element('figure', { className: ['diagram', 'last'] }, [
    element('div', { className: ['still'] }, [board(picture)]),
    element('figcaption', {}, [
      `${picture.title}. `,
      element('span', { className: ['to-move'] }, [strings.toMove[turn]], { role: 'to-move' }),
    ]),
  ]);
}
