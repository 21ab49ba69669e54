/**
 * A chapter as a document: a tree of HTML elements that says what is shown, and leaves open how it reaches
 * its reader. Its links are references and its boards are positions; a medium makes addresses and pictures
 * of them (`medium.ts`). Plain data. What tells an element's meaning is its `data`, never its class, which is for
 * style sheets alone.
 */
import type { Data } from 'hast';
import type { Color } from '../chess/index.ts';
import type { BoardPicture } from '../draw/index.ts';
import type { NodeRef } from '../model/index.ts';

/** Where a link leads. */
export type Target =
  /** A place in the moves of the course. */
  | { readonly to: 'place'; readonly ref: NodeRef }
  /** A chapter by its file, or something in it by its id; `query` as an author wrote it. */
  | {
      readonly to: 'chapter';
      readonly chapter: string;
      readonly query?: string;
      readonly id?: string;
    }
  /** A note of the text itself. */
  | { readonly to: 'note'; readonly id: string }
  /** A file of `media/`, or a page of the site as an author wrote it, as seen from the site's root. */
  | { readonly to: 'site'; readonly address: string }
  /** A place in another course of the shelf: beside the course, where the two are published together, and on the web. */
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
  /** A move in running text that the author has not marked as one: only a page makes a link of it. */
  | 'mention'
  /** Leads from a diagram to its place in the moves. */
  | 'show'
  /** Links to the picture files of a diagram. */
  | 'pictures'
  /** The answer that is folded below an exercise. */
  | 'answer'
  /** A piece's letter that a style sheet draws a figure over. */
  | 'figurine'
  /** A sign that a style sheet draws over its text. */
  | 'sign';

/** How a link speaks: of a move, of a position in our words or in the author's, or of anything else. */
export type LinkKind = 'move' | 'position' | 'position-words' | 'words';

/** A place of the course that a move names, and the words for it. */
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

/** The position that moves end with, for readers who cannot play them through. */
export interface LastBoardNode {
  type: 'lastBoard';
  picture: BoardPicture;
  turn: Color;
  data?: Data;
}

/** The number of a diagram, counted through the course. */
export interface DiagramNumberNode {
  type: 'diagramNumber';
  number: number;
  data?: Data;
}

/** The positions that have a pattern, chapter by chapter. */
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

/** A position, or several that follow one another in a line. */
export interface PatternPlace {
  /** The first of them. */
  readonly ref: NodeRef;
  /** The move that leads there, or words for a start. */
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
    /** Of the number of an answer: the id of its exercise. */
    exercise?: string;
    target?: Target;
    link?: LinkKind;
    /** Of a move: where else the course reaches its position. */
    meetings?: readonly Meeting[];
    /** Of a sign: what stands for it where no style sheet draws it. */
    plain?: string;
  }
  interface ElementContentMap {
    board: BoardNode;
    diagramNumber: DiagramNumberNode;
    lastBoard: LastBoardNode;
    places: PlacesNode;
  }
  interface RootContentMap {
    board: BoardNode;
    diagramNumber: DiagramNumberNode;
    lastBoard: LastBoardNode;
    places: PlacesNode;
  }
}
