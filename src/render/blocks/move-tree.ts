import type { Color } from '../../chess/index.ts';
import type { MoveNode } from '../../model/index.ts';
import type { Meeting } from '../document.ts';

/** Moves that are set as text: those of a block, the shown part of a game, an exercise's line. */
export interface MoveTree {
  /** As in `MovesBlock.nodes`. */
  readonly nodes: readonly MoveNode[];
  /** The side at the bottom of the board that they are played through on. */
  readonly view: Color;
  readonly result?: string | undefined;
  /** What tells them from other moves, for the style sheet and the page's script. */
  readonly className?: string;
  /** Id of a move in the page. Absent where moves are only printed, not played through. */
  readonly idOf?: (node: MoveNode) => string;
  /** Where else the course reaches the positions of its moves, by index (`meetings.ts`). */
  readonly meetings?: ReadonlyMap<number, readonly Meeting[]>;
  /** Whether the reader is asked for its moves: those with a bad sign are told from the others. */
  readonly asked?: true;
  /** Where the story begins: moves up to this node only lead there. */
  readonly leadsTo?: number;
}
