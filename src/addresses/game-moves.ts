import { type GameBlock, type MoveNode, mainLine } from '../model/index.ts';

/** The part of a game that its block shows, as a tree of its own. */
export interface GameMoves {
  /** As in `MovesBlock.nodes`; indices are the tree's own. */
  readonly nodes: readonly MoveNode[];
  /** Index in the game of each node. */
  readonly source: readonly number[];
  /** The node where the story begins: what lies before it only leads there. 0 for a whole game. */
  readonly leadsTo: number;
  /** The number of the last move, where moves are left out at the end. */
  readonly goesOnTo?: number;
}

const known = new WeakMap<GameBlock, GameMoves>();

/**
 * From `first` to `last` with comments and variations; before `first` the bare moves of the main
 * line, so that the game can be played through from its start.
 */
export function gameMoves(block: GameBlock): GameMoves {
  const moves = known.get(block) ?? cut(block);
  known.set(block, moves);
  return moves;
}

function cut({ nodes, first, last }: GameBlock): GameMoves {
  const line = mainLine(nodes).map(({ index }) => index);
  const lead = new Set(first === 0 ? [] : line.slice(0, line.indexOf(first) + 1));
  const kept: MoveNode[] = [];
  const isKept = new Set<number>();
  for (const node of nodes) {
    const { parent, index } = node;
    const beforeStory = parent !== undefined && parent !== first && lead.has(parent);
    const keep =
      lead.has(index) ||
      parent === undefined ||
      (parent !== last && isKept.has(parent) && !beforeStory);
    if (!keep) continue;
    isKept.add(index);
    kept.push(node);
  }
  const place = new Map(kept.map((node, index) => [node.index, index]));
  const at = (index: number): number[] => {
    const found = place.get(index);
    return found === undefined ? [] : [found];
  };
  const end = nodes[line.at(-1) ?? 0];
  return {
    nodes: kept.map((node, index): MoveNode => {
      const { parent, ...rest } = node;
      const [up] = parent === undefined ? [] : at(parent);
      return {
        ...rest,
        ...(up === undefined ? {} : { parent: up }),
        index,
        children: node.children.flatMap(at),
        ...(lead.has(node.index) ? { after: [], glyphs: [] } : { after: remap(node, at) }),
      };
    }),
    source: kept.map((node) => node.index),
    leadsTo: place.get(first) ?? 0,
    ...(end?.move && !isKept.has(end.index) ? { goesOnTo: end.move.number } : {}),
  };
}

function remap({ after }: MoveNode, at: (index: number) => number[]): MoveNode['after'] {
  return after.flatMap((item): MoveNode['after'] => {
    if (item.type === 'comment') return [item];
    return at(item.first).map((first) => ({ ...item, first }));
  });
}
