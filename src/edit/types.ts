import { type Fix, UserError } from '../diagnostics/index.ts';
import type { ArrowMeaning, Chapter, DirectiveName } from '../model/index.ts';

/** What replaces one range of a chapter's text; all of a change together, none overlapping another. */
export type Edits = readonly Fix[];

/** A chapter, and the very text it was made of: without a byte order mark, as places count. */
export interface WrittenChapter {
  readonly text: string;
  readonly chapter: Chapter;
}

/** A node of a block of the chapter. */
export interface NodeInChapter {
  /** The block's `key`. */
  readonly block: string;
  /** Index in the block's nodes. */
  readonly node: number;
}

export interface NewDirective {
  readonly name: DirectiveName;
  /** What stands in the brackets, as the course language has it. */
  readonly argument: string;
}

/** What is said of a position: directives first, then words. */
export interface NewWords {
  readonly directives?: readonly NewDirective[] | undefined;
  /** Inline Markdown without directives; nothing in it ends the comment that it is written into. */
  readonly comment?: string | undefined;
  /** Inline Markdown as an author wrote it, with its directives; a brace that would end the comment is escaped. */
  readonly source?: string | undefined;
}

export interface NewMove extends NewWords {
  /** Any SAN that names one legal move; written as canonical SAN. */
  readonly san: string;
  readonly glyphs?: readonly number[] | undefined;
  /** Other moves in its place, each with its line; written behind it. */
  readonly variations?: readonly (readonly NewMove[])[] | undefined;
}

/** What is drawn on a board: marked squares (`e4`), or arrows (`e2-e4`) of one meaning. */
export type DrawnKind = 'mark' | ArrowMeaning;

/** Why a change cannot be made by range; nothing has changed. */
export class EditRefusedError extends UserError {}
