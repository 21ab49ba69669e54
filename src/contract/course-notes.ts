import type { Square } from '../chess/index.ts';

/**
 * What practice knows of a course beside its table: where its lines begin, and what the author
 * says of the moves of the course's own side. Plain, serialisable data.
 */
export interface CourseNotes {
  /** Raised when a reader of older notes would misread these. */
  readonly format: 1;
  readonly starts: readonly LineStart[];
  /** Indices of positions in which the course advises a move that practice does not ask. */
  readonly unasked: readonly number[];
  /** Indices of positions that lines of practice keep away from, unless they lead to what is asked. */
  readonly aside: readonly number[];
  /** By `noteName`. */
  readonly notes: Readonly<Record<string, MoveNote>>;
}

export interface LineStart {
  readonly chapter: number;
  /** Index in `CourseTable.positions`. */
  readonly position: number;
  /** The full-move number there, from 1. */
  readonly number: number;
}

export interface MoveNote {
  /** The author's comments on the move, rendered; links lead from any page of the site. */
  readonly html: string;
  readonly marks?: readonly Square[];
  readonly arrows?: readonly NoteArrow[];
}

export interface NoteArrow {
  readonly meaning: 'plan' | 'threat' | 'guard';
  readonly from: Square;
  readonly to: Square;
}
