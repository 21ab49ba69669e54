/** A game on its way from a PGN file into a course: played, its comments still plain text. */
import type { PlainTag } from '../movetext/index.ts';

/** A place in a game that can be given a name. */
export interface Anchor {
  readonly labels: string[];
}

export interface DraftComment {
  readonly type: 'comment';
  readonly text: string;
  /** Whether it is what could not be read of a line, which states nothing of the board. */
  readonly isUnread?: true;
}

export interface DraftVariation {
  readonly type: 'variation';
  readonly line: DraftLine;
}

export interface DraftMove extends Anchor {
  readonly san: string;
  readonly number: number;
  readonly color: 'white' | 'black';
  readonly glyphs: { readonly nag: number }[];
  readonly after: (DraftComment | DraftVariation)[];
}

export interface DraftLine {
  /** Where it starts: the move before its first, or the start of the game. */
  readonly from: Anchor;
  readonly before: DraftComment[];
  readonly moves: DraftMove[];
}

export interface DraftGame {
  /** Counted from 1 through the file. */
  readonly number: number;
  readonly tags: readonly PlainTag[];
  readonly line: DraftLine;
  readonly result?: string | undefined;
  /** Text of a game of which nothing can be played. */
  readonly unread?: string;
}

/** What was not read, or not as it stands, and where it stands in the file. */
export interface ImportNote {
  readonly game: number;
  /** From 1. */
  readonly line: number;
  readonly message: string;
  /** The text that is meant; empty where nothing is. */
  readonly text: string;
  /** Whether the file is merely not as the standard says, and nothing of it is lost. */
  readonly formal?: true;
}
