import type { Color } from '../../chess/index.ts';
import type { LineKind } from '../../contract/index.ts';
import type { MoveNode } from '../../model/index.ts';
import type { Meeting } from '../document.ts';

/** Moves that are set as text: those of a block, the shown part of a game, an exercise's line. */
export interface MoveTree {
  /** As in `MovesBlock.nodes`. */
  readonly nodes: readonly MoveNode[];
  /** The side at the bottom of the board. */
  readonly view: Color;
  readonly result?: string | undefined;
  /** What they are to an exercise: readers are asked for them, and bad ones are marked as such. */
  readonly line?: LineKind;
  /** The id of a move in the page. Absent where moves are only printed. */
  readonly idOf?: (node: MoveNode) => string;
  /** Where else the course reaches the positions, by index (`meetings.ts`). */
  readonly meetings?: ReadonlyMap<number, readonly Meeting[]>;
  /** Moves up to this node only lead to the start of the text. */
  readonly leadsTo?: number;
}
