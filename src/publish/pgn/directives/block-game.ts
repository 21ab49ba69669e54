import type { Position } from '../../../chess/index.ts';
import type { PlainLine, PlainTag } from '../../../movetext/index.ts';

/** A piece of a chapter as a game. */
export interface BlockGame {
  readonly kind: 'course' | 'chapter' | 'text' | 'moves' | 'game' | 'exercise' | 'diagram';
  readonly line: PlainLine;
  /** What stands behind the name of the block in its first line. */
  readonly attributes?: string;
  /** Tags that the author wrote. */
  readonly tags?: readonly PlainTag[];
  /** The result that stands in the block. */
  readonly result?: string | undefined;
  readonly position?: Position | undefined;
  /** Whether its comments are words alone, as those of a games file. */
  readonly hasPlainComments?: boolean;
}

/** A block of the course language, from its opening line to its last. */
export interface WrittenBlock {
  readonly attributes: string;
  readonly content: string;
}
