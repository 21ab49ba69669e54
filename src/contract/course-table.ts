/**
 * A course as one table of positions: what practice, comparing and searching look up in the
 * reader's browser, and `linewright compare` on the author's machine. Plain, serialisable data.
 */
export interface CourseTable {
  /** Raised when a reader of an older table would misread this one. */
  readonly format: 1;
  /** The course through all its editions. */
  readonly course: string;
  /** Another one for every change of the table. */
  readonly edition: string;
  readonly title: string;
  readonly language: string;
  readonly side: 'white' | 'black' | 'both';
  readonly chapters: readonly TableChapter[];
  readonly positions: readonly TablePosition[];
  /**
   * Address of the course's site, with a final `/`, as seen from the page that has loaded the table: set there where
   * that page is of a shelf; the build writes none.
   */
  readonly at?: string;
  /** Indices of the positions that come before the course's subject, where the course says where that begins. */
  readonly before?: readonly number[];
}

export interface TableChapter {
  readonly title: string;
  /** File name of its page. */
  readonly page: string;
}

/**
 * A place that shows a position: the index of its chapter, and its id on that page. The id is left out
 * where it is the address of the position; `.name` is that address with the name of the line.
 */
export type TablePlace = readonly [chapter: number, id?: string];

/** A position, once, however it is reached. */
export interface TablePosition {
  /** `Position.key`: the first four fields of the FEN. */
  readonly key: string;
  /** Where it stands, in the order of the course. */
  readonly at: readonly TablePlace[];
  /** The full-move number, where a block begins here that is not from move 1. */
  readonly number?: number;
  /** The author's names for it, which old addresses may end with; readers never see them. */
  readonly names?: readonly string[];
  readonly title?: string;
  /** The moves that the course has from here, the advice first. */
  readonly moves: readonly TableMove[];
}

/**
 * What a move is to the course: its own side's `advice`, an `option` that it mentions beside, or
 * a move that it calls `bad`; a `reply` of the other side that it covers. With a course for both
 * sides every move that is not bad is an `option`.
 */
export type TableMoveKind = 'advice' | 'option' | 'bad' | 'reply';

export interface TableMove {
  /** Canonical SAN, in English letters. */
  readonly san: string;
  /** Index of the position that it leads to. */
  readonly to: number;
  readonly kind: TableMoveKind;
  /** Where it stands: the places of its position that it leads to. */
  readonly at: readonly TablePlace[];
}

/**
 * Script at the root of the site that brings the table to a page which seldom needs it. Its name stays the same,
 * unlike the table's own, so that a chapter's page does not change with every other chapter.
 */
export const tableLoader = 'course-table.js';

/** The event of the window that tells that the loader has brought the table. */
export const tableLoaded = 'course-table';
