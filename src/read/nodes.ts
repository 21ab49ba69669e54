/**
 * The nodes that Linewright adds to mdast, in chapter bodies and in comments. `remark` users
 * meet them through the plugin; the site turns them into HTML.
 */
import type { Node, PhrasingContent } from 'mdast';
import type { Point } from '../diagnostics/index.ts';

/**
 * A node of the course's moves. It stays valid as long as its block is unchanged, whatever is inserted before it in
 * the chapter or the course.
 */
export interface NodeRef {
  /** The chapter's file. */
  readonly chapter: string;
  /** The block's `key`. */
  readonly block: string;
  /** Index in the block's nodes. */
  readonly node: number;
}

/** Takes the place of a fenced block of the course language. */
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
  'learn',
  'judge',
  'todo',
  'allow',
] as const;
export type DirectiveName = (typeof directiveNames)[number];

/** A stretch of the file, within that of a node. */
export interface Range {
  readonly start: Point;
  readonly end: Point;
}

/** A text directive, `:name[argument]`. */
export interface DirectiveNode extends Node {
  type: 'courseDirective';
  name: DirectiveName;
  /** With single spaces, whatever stands in the file; of `here` the name alone. */
  argument: string;
  /** What stands between the brackets; of `here` the name. */
  argumentRange: Range;
  /** Of `here`: what readers see in place of the name. Plain text, with single spaces. */
  title?: string;
  /** The title, without its quotation marks. */
  titleRange?: Range;
  /** Unique in its file; the model's tables of what directives speak of are indexed by it. */
  id: number;
}

/** `[text](pos:label)`. */
export interface PositionLinkNode extends Node {
  type: 'positionLink';
  label: string;
  /** The label in the link's address; the whole link where its address stands elsewhere. */
  labelRange: Range;
  children: PhrasingContent[];
}

/** `[text](pos:course/label)`: leads to a named position of another course of the shelf. */
export interface CourseLinkNode extends Node {
  type: 'courseLink';
  /** Its id. */
  course: string;
  label: string;
  /** As `PositionLinkNode.labelRange`, of `course/label`. */
  labelRange: Range;
  children: PhrasingContent[];
}

/** Moves in prose, written as inline code with a move number: `` `7.Bg2 Be7` ``. */
export interface ProseMovesNode extends Node {
  type: 'proseMoves';
  value: string;
  moves: ProseMove[];
  /** Unique in its file, shared with directives. */
  id: number;
}

export interface ProseMove {
  /** As written, with its number where it has one. */
  text: string;
  san: string;
  /** The full-move number and the side, continued from the first move where not written. */
  number: number;
  color: 'white' | 'black';
  /** Of `text`; of the whole code where the file spells it otherwise, as over two lines of a list. */
  range: Range;
}

declare module 'mdast' {
  interface HeadingData {
    /** In a translation: the words of the original, of which its address is made. */
    original?: string;
  }
  interface LinkData {
    /** Where its address stands in the file; absent where it stands elsewhere or is spelt otherwise. */
    urlRange?: Range;
  }
  interface RootContentMap {
    courseBlock: BlockNode;
    courseDirective: DirectiveNode;
    courseLink: CourseLinkNode;
    positionLink: PositionLinkNode;
    proseMoves: ProseMovesNode;
  }
  interface PhrasingContentMap {
    courseDirective: DirectiveNode;
    courseLink: CourseLinkNode;
    positionLink: PositionLinkNode;
    proseMoves: ProseMovesNode;
  }
}
