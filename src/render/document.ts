/**
 * A chapter as a document: a tree of HTML elements that leaves open how it reaches readers. Links are references and
 * boards are positions; a medium (`medium/`) turns them into addresses and pictures. Plain data. The meaning of an
 * element is its `data`, never its class, which is for style sheets alone.
 */
import type { Data, ElementContent } from 'hast';
import type { Color } from '../chess/index.ts';
import type { BoardPicture } from '../draw/index.ts';
import type { NodeRef } from '../model/index.ts';

/** Where a link leads. */
export type Target =
  /** A node of the course's moves. */
  | { readonly to: 'place'; readonly ref: NodeRef }
  /** A chapter by its file, or an id in it; `query` as an author wrote it. */
  | {
      readonly to: 'chapter';
      readonly chapter: string;
      readonly query?: string;
      readonly id?: string;
    }
  /** A footnote of the text. */
  | { readonly to: 'note'; readonly id: string }
  /** A file of `media/`, or a page of the site, relative to the site's root. */
  | { readonly to: 'site'; readonly address: string }
  /** A position in another course of the shelf: relative, where both are published together, and on the web. */
  | { readonly to: 'course'; readonly beside?: string; readonly web?: string }
  /** The picture of a diagram. */
  | { readonly to: 'picture'; readonly address: string }
  | { readonly to: 'web'; readonly address: string };

/** What an element is to the course. */
export type Role =
  | 'moves'
  | 'variations'
  /** A variation within a paragraph. */
  | 'variation'
  | 'game'
  | 'exercise'
  | 'diagram'
  | 'pattern'
  /** A table of the author's. */
  | 'table'
  /** Who is to move. */
  | 'to-move'
  | 'answers'
  /** The heading of the answers. */
  | 'answers-title'
  /** A move that is played through on a page. */
  | 'move'
  /** A move in running text that the author did not mark; only pages link it. */
  | 'mention'
  /** The link from a diagram to its node in the moves. */
  | 'show'
  /** Links to the picture files of a diagram. */
  | 'pictures'
  /** The folded answer below an exercise. */
  | 'answer'
  /** A piece letter over which a style sheet draws a figurine. */
  | 'figurine'
  /** Text over which a style sheet draws a sign. */
  | 'sign';

/** What the words of a link are: a move, a position in our words or the author's, or anything else. */
export type LinkKind = 'move' | 'position' | 'position-words' | 'words';

/** Another place of the course with the position of a move, and its words. */
export interface Meeting {
  readonly ref: NodeRef;
  readonly move: string;
}

/** A board in the text. */
export interface BoardNode {
  type: 'board';
  picture: BoardPicture;
  data?: Data;
}

/** The last position of a block, for readers who cannot play through its moves. */
export interface LastBoardNode {
  type: 'lastBoard';
  picture: BoardPicture;
  turn: Color;
  data?: Data;
}

/** Text in a row that is the same in every medium of HTML (`fixed-text.ts`). */
export interface FixedNode {
  type: 'fixed';
  children: ElementContent[];
  /** Written once, when a medium first asks. */
  html?: string;
  data?: Data;
}

/** The number of a diagram, counted through the course. */
export interface DiagramNumberNode {
  type: 'diagramNumber';
  number: number;
  data?: Data;
}

/** The positions that match a pattern, by chapter. */
export interface PlacesNode {
  type: 'places';
  chapters: readonly ChapterPlaces[];
  data?: Data;
}

export interface ChapterPlaces {
  /** `In this chapter:`. */
  readonly lead: string;
  readonly places: readonly PatternPlace[];
}

/** A position, or several in a row. */
export interface PatternPlace {
  /** The first of them. */
  readonly ref: NodeRef;
  /** The move that leads there, or words for a start position. */
  readonly move: string;
  readonly isMove: boolean;
  /** The move that leads to the last of several. */
  readonly last?: string;
  readonly count: number;
  /** The author's title of the first. */
  readonly title?: string;
}

declare module 'hast' {
  interface ElementData {
    role?: Role;
    /** For the number of an answer: the id of its exercise. */
    exercise?: string;
    target?: Target;
    link?: LinkKind;
    /** For a move: where else the course reaches its position. */
    meetings?: readonly Meeting[];
    /** For a sign: its text where no style sheet draws it. */
    plain?: string;
  }
  interface ElementContentMap {
    board: BoardNode;
    diagramNumber: DiagramNumberNode;
    fixed: FixedNode;
    lastBoard: LastBoardNode;
    places: PlacesNode;
  }
  interface RootContentMap {
    board: BoardNode;
    diagramNumber: DiagramNumberNode;
    fixed: FixedNode;
    lastBoard: LastBoardNode;
    places: PlacesNode;
  }
}
