import type { Element } from 'hast';
import { chapterIds, gameMoves } from '../../addresses/index.ts';
import type { GameBlock, MoveNode } from '../../model/index.ts';
import type { RenderContext } from '../context.ts';
import { element } from '../hast.ts';
import { gameExit } from './game-exit.ts';
import { gameHead, resultInPrint } from './game-head.ts';
import { meetingsOf } from './meetings.ts';
import { type RenderComment, setMoves } from './moves-block.ts';

/** A game: its head, the moves that are shown, and where it leaves the course. */
export function renderGame(
  context: RenderContext,
  block: GameBlock,
  renderComment: RenderComment,
): Element {
  const { strings } = context;
  const { nodes, source, leadsTo, goesOnTo } = gameMoves(block);
  const idOf = ({ index }: MoveNode) =>
    chapterIds(context.chapter).ofNode(block, source[index] ?? 0);
  const result = goesOnTo === undefined ? resultInPrint(block.result) : undefined;
  const moves = setMoves(
    context,
    { nodes, view: block.view, result, idOf, leadsTo, meetings: meetingsOf(context, nodes) },
    renderComment,
  );
  const rest = goesOnTo === undefined ? [] : [strings.gameGoesOn(goesOnTo), ' '];
  const exit = element('p', { className: ['game-exit'] }, [...rest, ...gameExit(context, block)]);
  const head = element('header', {}, gameHead(context, block));
  return element('section', { className: ['game'] }, [head, moves, exit], { role: 'game' });
}
