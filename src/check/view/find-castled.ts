import type { PlayedMove } from '../../chess/index.ts';
import type { CourseIndex, Occurrence } from './course-index.ts';
import { firstReached } from './find-twins.ts';

/** The castlings that led to a position by the first way to it, as far as the course shows that way. */
export function findCastled(index: CourseIndex, key: string): readonly PlayedMove[] {
  const found: PlayedMove[] = [];
  const passed = new Set<Occurrence>();
  let at = firstReached(index, key);
  while (at && !passed.has(at)) {
    passed.add(at);
    const castling = castlingOf(at);
    if (castling) found.unshift(castling);
    const { chapter, block, node } = at;
    // A block that starts from a position goes on from where that is reached.
    at =
      node.parent === undefined
        ? firstReached(index, node.key)
        : index.blocks.get(`${chapter} ${block}`)?.[node.parent];
  }
  return found;
}

function castlingOf({ node: { san, name, key } }: Occurrence): PlayedMove | undefined {
  if (!san?.startsWith('O-O')) return undefined;
  // It is the other side's turn behind the move.
  const color = key.split(' ')[1] === 'w' ? 'black' : 'white';
  const rank = color === 'white' ? 1 : 8;
  const to = san.startsWith('O-O-O') ? 'c' : 'g';
  return {
    san,
    color,
    number: Number.parseInt(name, 10),
    from: `e${rank}`,
    to: `${to}${rank}`,
    after: { key, fen: `${key} 0 1` },
  };
}
