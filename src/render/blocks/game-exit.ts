import type { ElementContent } from 'hast';
import { sideToMove } from '../../chess/index.ts';
import type { GameBlock, NodeRef } from '../../model/index.ts';
import { compose, inSeries } from '../compose.ts';
import type { RenderContext } from '../context.ts';
import { linkTo, text } from '../hast.ts';
import { numberedMove } from '../notation.ts';

/** Says where a game leaves the course, which side left it, and what the course has there. */
export function gameExit(context: RenderContext, block: GameBlock): ElementContent[] {
  const { ask, settings, strings } = context;
  const { leaves, nodes } = block;
  const last = leaves && nodes[leaves.node];
  if (leaves === undefined || last?.position === undefined) {
    return [text(strings.gameLeaves.never)];
  }
  const there =
    last.move === undefined
      ? strings.startPosition
      : strings.after(numberedMove(last.move, strings));
  const isHere = leaves.ref.chapter === block.chapter;
  const title = isHere ? undefined : ask('chapter', leaves.ref.chapter)?.title;
  const after = positionLink(
    leaves.ref,
    title === undefined ? there : strings.inChapter(there, title),
  );
  const next = leaves.next === undefined ? undefined : nodes[leaves.next];
  if (next?.move === undefined) return compose(strings.gameLeaves.within, { after });

  const ownMove = { chapter: block.chapter, block: block.key, node: next.index };
  const played = moveLink(ownMove, numberedMove(next.move, strings));
  const side = strings.gameLeaves.sides[next.move.color];
  const moveOf = (ref: NodeRef): ElementContent[] => {
    const move = ask('move', ref);
    return move === null ? [] : [moveLink(ref, numberedMove(move, strings))];
  };
  const advice = ask('advice', last.position.key);
  if (advice !== null) {
    const parts = { side, after, played, advice: moveOf(advice) };
    return compose(strings.gameLeaves.advised, parts);
  }
  const moves = inSeries(ask('movesFrom', last.position.key).flatMap(moveOf), strings.and);
  if (moves.length === 0) return compose(strings.gameLeaves.ended, { after, played });
  const isReply = settings.side !== 'both' && sideToMove(last.position) !== settings.side;
  const sentence = isReply ? strings.gameLeaves.covered : strings.gameLeaves.known;
  return compose(sentence, { side, after, played, moves });
}

function positionLink(ref: NodeRef, words: string): ElementContent {
  return linkTo({ to: 'place', ref }, 'position', [words]);
}

function moveLink(ref: NodeRef, words: string): ElementContent {
  return linkTo({ to: 'place', ref }, 'move', [words]);
}
