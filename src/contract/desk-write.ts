import type { Color } from '../chess/index.ts';

/** What a chapter's page in `dev` and the server tell one another when the author writes by playing. */

/** A place on a chapter's page, as the page knows it. */
export interface PlaceOnPage {
  /** `DeskState.version` of the page. */
  readonly version: number;
  readonly chapter: string;
  /** The id of a move, of a block's start or of an exercise. */
  readonly at: string;
}

/** Asks what stands at a place, and what is true there after some more moves. */
export interface LookAsked extends PlaceOnPage {
  /** In SAN. */
  readonly moves: readonly string[];
  /** How many of them lead to the position that is looked at; all of them unless given. */
  readonly shown?: number | undefined;
}

/** A position that the course has under a name, met by new moves. */
export interface NamedMeeting {
  /** How many of the new moves lead there. */
  readonly after: number;
  readonly name: string;
  readonly file: string;
  readonly line: number;
}

/** What an author may know of a place before writing to it. */
export interface LookAnswer {
  /** A hash of the chapter's text that the page was made of; what is written is sent with it. */
  readonly text: string;
  readonly file: string;
  readonly line: number;
  readonly kind: 'moves' | 'exercise';
  /** The number of the next move; 1 where the position has none. */
  readonly number: number;
  /** Whose moves the course advises. */
  readonly side: Color | 'both';
  /** What the block plays here, or the exercise lists, with numbers (`9...cxd4`): the first continues a line. */
  readonly next: readonly string[];
  readonly glyphs: readonly number[];
  /** What is drawn on its board: squares, and arrows such as `e2-e4`. */
  readonly drawn: readonly { readonly kind: DrawnOnBoard; readonly item: string }[];
  readonly names: readonly string[];
  /** Claims that are true after the moves asked for, the most telling first. */
  readonly claims: readonly string[];
  /** Where the moves asked for come to positions that the course has under a name; one for each. */
  readonly meetings: readonly NamedMeeting[];
  readonly history: WriteHistory;
}

export type DrawnOnBoard = 'mark' | 'plan' | 'threat' | 'guard';

/** What can be taken back or made again; each says what it was. */
export interface WriteHistory {
  readonly undo?: string | undefined;
  readonly redo?: string | undefined;
}

export interface WordsToWrite {
  readonly comment?: string | undefined;
  readonly name?: string | undefined;
  /** What readers see in place of the name. */
  readonly title?: string | undefined;
  /** The name under which the course has this position already. */
  readonly same?: string | undefined;
  readonly claims?: readonly string[] | undefined;
  readonly drawn?: readonly { readonly kind: DrawnOnBoard; readonly item: string }[] | undefined;
}

export interface MoveToWrite extends WordsToWrite {
  readonly san: string;
  readonly glyphs?: readonly number[] | undefined;
  readonly option?: boolean | undefined;
}

export type ChangeToWrite =
  | { readonly kind: 'line'; readonly moves: readonly MoveToWrite[] }
  | ({ readonly kind: 'words' } & WordsToWrite)
  | { readonly kind: 'glyph'; readonly nag: number }
  | { readonly kind: 'draw'; readonly draw: DrawnOnBoard; readonly item: string }
  | {
      readonly kind: 'answer';
      readonly list: 'answer' | 'also' | 'wrong';
      readonly moves: readonly MoveToWrite[];
    };

export interface WriteAsked extends PlaceOnPage {
  /** `LookAnswer.text` */
  readonly text: string;
  readonly change: ChangeToWrite;
  /** The id that what is written will have on the page; that of the place unless given. */
  readonly to?: string | undefined;
}

export interface WriteAnswer {
  readonly file: string;
  /** The first line that is new or changed. */
  readonly line: number;
  /** Where the page's board is to stand: an id that it has once it is made anew. */
  readonly at: string;
  readonly history: WriteHistory;
}
