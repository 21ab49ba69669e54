/** What a form of statement is: a thing that sentences say of a position, and how the board answers. */
import type { Color, PlayedMove, Position } from '../../../chess/index.ts';
import type { Side } from '../../../model/index.ts';
import type { Meaning } from '../phrase.ts';

/** A position that a sentence may speak of, and what the course knows around it. */
export interface Situation {
  readonly position: Position;
  readonly side: Side;
  /** The castlings that led here, as far as the course shows them. */
  readonly castlings: () => readonly PlayedMove[];
  /** The moves that the course plays from here, in SAN. */
  readonly covered: () => readonly string[];
  /** The sign that says there who stands better: its number in the PGN standard, section 10. */
  readonly assessment?: number | undefined;
  /** The positions on the way here, the nearest first. */
  readonly before: () => readonly Position[];
}

/** What the board says of a statement; nothing where no board can say it for sure. */
export interface StatementVerdict {
  readonly holds: boolean;
  /** Why, in one English clause about the board, without a full stop. */
  readonly because: string;
  /** The claim that says the same, where it holds and there is one. */
  readonly claim?: string;
  /** What is true instead, as a hint. */
  readonly instead?: string;
}

/** A sentence, the position it is said of, and what comes of it: a test. */
export interface FormExample {
  /** Default: English. */
  readonly language?: 'en' | 'de' | 'es';
  /** Movetext from the initial position, or from `fen`. */
  readonly moves?: string;
  readonly fen?: string;
  readonly says: string;
  /** Absent where the sentence is left alone. */
  readonly holds?: boolean;
  readonly because?: string;
  /** The side of the course; default `white`. */
  readonly side?: Side;
}

export interface Form {
  /** English for the handbook: what is read. */
  readonly reads: string;
  /**
   * Where else it may hold, so that it is left alone: `near`, in the two moves before and behind and wherever
   * the words around it look; `here`, nowhere else.
   */
  readonly reach: 'here' | 'near';
  /** Whether a position beside it bears it out only where it can be judged there; else wherever it is not refuted. */
  readonly strict?: true;
  /** Whether it names what stands there already, so that a denial or a move in the sentence changes nothing. */
  readonly names?: true;
  /** Whether it is sure by its own words, whatever else the sentence says; or only where it begins with them. */
  readonly alone?: 'always' | 'at-start';
  readonly judge: (meaning: Meaning, situation: Situation) => StatementVerdict | undefined;
  readonly examples: readonly FormExample[];
}

/** Whom a phrase speaks of; nobody where it says "we" in a course for both sides. */
export function whoIs({ side }: Meaning, situation: Situation): Color | undefined {
  if (side !== 'us') return side;
  return situation.side === 'both' ? undefined : situation.side;
}
