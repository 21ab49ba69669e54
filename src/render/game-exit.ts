import type { ElementContent } from 'hast';
import { adviceOf } from '../check/index.ts';
import { sideToMove } from '../chess/index.ts';
import { chapterAt, type GameBlock, type NodeRef } from '../model/index.ts';
import { compose, inSeries } from './compose.ts';
import { nodeAt, type RenderContext } from './context.ts';
import { linkTo, text } from './hast.ts';
import { numberedMove } from './notation.ts';

/** Where a game leaves the course, who left it, and what the course has there instead. */
export function gameExit(context: RenderContext, block: GameBlock): ElementContent[] {
  const { course, strings } = context;
  const { leaves, nodes } = block;
  const last = leaves && nodes[leaves.node];
  if (leaves === undefined || last?.position === undefined) {
    return [text(strings.gameLeaves.never)];
  }
  const there =
    last.move === undefined
      ? strings.startPosition
      : strings.after(numberedMove(last.move, strings));
  const chapter = chapterAt(course, leaves.ref);
  const elsewhere = leaves.ref.chapter !== block.chapter && chapter !== undefined;
  const after = positionLink(
    leaves.ref,
    elsewhere ? strings.inChapter(there, chapter.title) : there,
  );
  const next = leaves.next === undefined ? undefined : nodes[leaves.next];
  if (next?.move === undefined) return compose(strings.gameLeaves.within, { after });

  const ownMove = { chapter: block.chapter, block: block.key, node: next.index };
  const played = moveLink(ownMove, numberedMove(next.move, strings));
  const side = strings.gameLeaves.sides[next.move.color];
  const moveOf = (ref: NodeRef): ElementContent[] => {
    const move = nodeAt(course, ref)?.move;
    return move === undefined ? [] : [moveLink(ref, numberedMove(move, strings))];
  };
  const [advice] = adviceOf(course).get(last.position.key) ?? [];
  if (advice !== undefined) {
    const parts = { side, after, played, advice: moveOf(advice.ref) };
    return compose(strings.gameLeaves.advised, parts);
  }
  const covered = course.graph[last.position.key]?.moves ?? [];
  const moves = inSeries(
    covered.flatMap(({ at: [ref] }) => (ref === undefined ? [] : moveOf(ref))),
    strings.and,
  );
  if (moves.length === 0) return compose(strings.gameLeaves.ended, { after, played });
  const isReply =
    course.settings.side !== 'both' && sideToMove(last.position) !== course.settings.side;
  const sentence = isReply ? strings.gameLeaves.covered : strings.gameLeaves.known;
  return compose(sentence, { side, after, played, moves });
}

function positionLink(ref: NodeRef, words: string): ElementContent {
  return linkTo({ to: 'place', ref }, 'position', [words]);
}

function moveLink(ref: NodeRef, words: string): ElementContent {
  return linkTo({ to: 'place', ref }, 'move', [words]);
}
