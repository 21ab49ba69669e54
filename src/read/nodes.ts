/**
 * The nodes that Linewright adds to mdast, in chapter bodies and in comments. `remark` users
 * meet them through the plugin; the site turns them into HTML.
 */
import type { Node, PhrasingContent } from 'mdast';

/** One place in the course's moves, by indices into `chapters`, `blocks` and `nodes`. */
export interface NodeRef {
  readonly chapter: number;
  readonly block: number;
  readonly node: number;
}

/** Stands where a fenced block of the course language stood. */
export interface BlockNode extends Node {
  type: 'courseBlock';
  /** Index in `Chapter.blocks`. */
  block: number;
}

export const directiveNames = [
  'here',
  'mark',
  'plan',
  'threat',
  'guard',
  'claim',
  'same',
  'later',
  'end',
  'option',
  'allow',
] as const;
export type DirectiveName = (typeof directiveNames)[number];

/** A text directive, `:name[argument]`. */
export interface DirectiveNode extends Node {
  type: 'courseDirective';
  name: DirectiveName;
  argument: string;
  /** Set by the model: the position it speaks of, where it speaks of one. */
  at?: NodeRef;
}

/** `[text](pos:label)`. */
export interface PositionLinkNode extends Node {
  type: 'positionLink';
  label: string;
  /** Set by the model where the label exists. */
  target?: NodeRef;
  children: PhrasingContent[];
}

/** Moves in prose, written as inline code with a move number: `` `7.Bg2 Be7` ``. */
export interface ProseMovesNode extends Node {
  type: 'proseMoves';
  value: string;
  /** One for each move; `target` is set by the model where a block of the chapter has it. */
  moves: ProseMove[];
  /** Set by the model where it stopped looking for moves, which has a finding of its own. */
  unsought?: true;
}

export interface ProseMove {
  /** As written, with its number where it has one. */
  text: string;
  san: string;
  /** The full-move number and the side, counted on from the first move where not written. */
  number: number;
  color: 'white' | 'black';
  target?: NodeRef;
}

declare module 'mdast' {
  interface RootContentMap {
    courseBlock: BlockNode;
    courseDirective: DirectiveNode;
    positionLink: PositionLinkNode;
    proseMoves: ProseMovesNode;
  }
  interface PhrasingContentMap {
    courseDirective: DirectiveNode;
    positionLink: PositionLinkNode;
    proseMoves: ProseMovesNode;
  }
}
