/** What differs between two editions of a course, on the board and not in the text: plain data. */
import type { Color } from '../chess/index.ts';
import type { Side } from '../model/index.ts';

export interface CourseChanges {
  /** The side that the course is for, where that is another one now. */
  readonly side?: { readonly old: Side; readonly new: Side };
  /** Those chapters in which something changed, in the order of the new edition. */
  readonly chapters: readonly ChapterChanges[];
}

export interface ChapterChanges {
  readonly id: string;
  readonly title: string;
  /** `new` and `dropped` are chapters most of whose positions the other edition has not. */
  readonly status: 'new' | 'kept' | 'dropped';
  /** Of a new chapter those that are new, of a dropped one those that are gone. */
  readonly positions: number;
  /** By kind, in the order of `changeKinds`, then in the order of the course. */
  readonly changes: readonly Change[];
}

export const changeKinds = [
  'advice',
  'reply',
  'extended',
  'start',
  'option',
  'judged',
  'assessment',
  'dropped',
  'exercise',
  'pattern',
] as const;

export type Change =
  | AdviceChange
  | ReplyChange
  | LineChange
  | JudgedChange
  | AssessmentChange
  | DroppedChange
  | ExerciseChange
  | PatternChange;

/** Another move is advised: at least one of `old` and `new` is there. */
export interface AdviceChange {
  readonly kind: 'advice';
  readonly at: EditionPlace;
  readonly old?: Move;
  readonly new?: Move;
  /** Whether the old move is called bad now: it was a mistake. */
  readonly mistake?: true;
  /** The author's: what `:option[…]` says of the old move, or the comment at a mistake. */
  readonly reason?: string;
  readonly board: ChangeBoard;
  /** New positions behind the new move. */
  readonly positions: number;
}

/** A move of the other side, or of either in a course for both, that the old edition did not have. */
export interface ReplyChange {
  readonly kind: 'reply';
  readonly at: EditionPlace;
  readonly move: Move;
  readonly answer?: Move;
  readonly positions: number;
}

/**
 * `extended`: the old edition ended here. `option`: a move of the course's side beside the advice.
 * `start`: moves from a position that the old edition did not have at all.
 */
export interface LineChange {
  readonly kind: 'extended' | 'option' | 'start';
  readonly at: EditionPlace;
  readonly move?: Move;
  readonly positions: number;
}

/** A move of the course's side, advised in neither edition, is called bad now, or no longer. */
export interface JudgedChange {
  readonly kind: 'judged';
  readonly at: EditionPlace;
  readonly move: Move;
  readonly bad: boolean;
  /** The author's comment at a move that is called bad. */
  readonly reason?: string;
  readonly board: ChangeBoard;
}

/** The position before a change, as a board shows it. */
export interface ChangeBoard {
  readonly fen: string;
  /** From and to, `e2-e4`: of the move that is advised now. */
  readonly advised?: string;
}

/** A position has another assessment. */
export interface AssessmentChange {
  readonly kind: 'assessment';
  readonly at: EditionPlace;
  readonly old: number;
  readonly new: number;
}

/** Moves that the new edition has nowhere, told at the first of them. */
export interface DroppedChange {
  readonly kind: 'dropped';
  readonly at: EditionPlace;
  /** Absent where the position that the line started from is gone as well. */
  readonly move?: Move;
  /** Positions that are gone with it. */
  readonly positions: number;
}

/** An answer is never told: a student would read it before the question. */
export interface ExerciseChange {
  readonly kind: 'exercise';
  readonly what: 'new' | 'changed' | 'dropped';
  /** Its number within its chapter, in the edition that has it. */
  readonly number: number;
  readonly at: EditionPlace;
}

export interface PatternChange {
  readonly kind: 'pattern';
  /** `said`: the same pieces, but other advice or claims. */
  readonly what: 'new' | 'changed' | 'said' | 'dropped';
  readonly title: string;
  readonly at: EditionPlace;
}

/** A move with its number; `san` is canonical, in English letters. */
export interface Move {
  readonly san: string;
  readonly number: number;
  readonly color: Color;
}

/** A place in an edition of the course. */
export interface EditionPlace {
  /** Id and file of the chapter. */
  readonly chapter: string;
  readonly file: string;
  /** The move that leads there; absent at the start of a block and for what is no move. */
  readonly after?: Move;
  readonly label?: string;
  /** Id within the chapter's page. */
  readonly id: string;
  /** Whether the new edition has the place, so that it can be linked to. */
  readonly stands: boolean;
}
