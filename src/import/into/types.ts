import type { Position } from '../../chess/index.ts';
import type { NewMove } from '../../edit/index.ts';
import type { ImportNote } from '../types.ts';

export interface SourceGame {
  /** Counted from 1 through the file. */
  readonly number: number;
  readonly name: string;
}

/** A position of the course, the moves by which a game came there, and the games. */
interface Found {
  readonly position: Position;
  /** `1.d4 d5 2.c4`; empty at the start of the game. */
  readonly way: string;
  readonly games: SourceGame[];
}

/** What the course lacks from one of its positions on: moves, each with those that follow it. */
export interface NewBranch extends Found {
  readonly root: NewNode;
}

export interface NewNode {
  readonly san: string;
  /** Whether the course's side makes it. */
  readonly isOwn: boolean;
  readonly glyphs: number[];
  readonly comments: Pick<NewMove, 'comment' | 'source'>[];
  /** The first is the line, the others stand in its place. */
  readonly children: NewNode[];
  /** The key of a position that stands elsewhere: the line ends here. */
  meets?: string;
}

/** A move that is not written, nor is what follows it. */
export interface Unwritten extends Found {
  readonly san: string;
  /** The moves that follow it in the game. */
  readonly rest: string;
}

/** A move of the course's side that the course does not have where it advises another. */
export interface AgainstAdvice extends Unwritten {
  readonly advised: readonly string[];
}

/** A move at a position where the course ends on purpose, by `:end`. */
export type PastEnd = Unwritten;

/** Words at a move that the course has, or at one that is not written. They are not written. */
export interface SaidOnly extends Found {
  readonly text: string;
}

/** A whole game that illustrates. */
export interface PlayedGame extends SourceGame {
  readonly block: string;
  /** Whether the course shows a game of the same moves. */
  readonly isThere: boolean;
}

/** What a file has for a course. */
export interface Laid {
  readonly games: number;
  /** Moves that the course has already. */
  readonly known: number;
  readonly branches: readonly NewBranch[];
  readonly against: readonly AgainstAdvice[];
  readonly past: readonly PastEnd[];
  readonly said: readonly SaidOnly[];
  readonly played: readonly PlayedGame[];
  /** Games whose lines meet no position of the course, or none of its subject. */
  readonly apart: readonly SourceGame[];
  readonly notes: readonly ImportNote[];
}
