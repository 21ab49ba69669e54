/** What a kind of claim is. One kind, one file, with its definition and the positions that are its tests. */
import type { PlayedMove, Position } from '../../chess/index.ts';
import type { Side } from '../../model/index.ts';
import type { ArgumentReader } from './reading/argument-reader.ts';

/** What a claim is judged by: the board, and what the course says around it. */
export interface ClaimContext {
  readonly position: Position;
  readonly side: Side;
  /** The position before the last move; absent where that is not known. */
  readonly before?: Position;
  /** The moves that blocks of the course play from here, in SAN. */
  readonly covered: readonly string[];
  /** The same for any other position; none unless given. */
  readonly coveredFrom?: (position: Position) => readonly string[];
  /** The castlings among the moves that led here, as far as the course shows them. */
  readonly castlings: () => readonly PlayedMove[];
  /** The position of a label; absent where it cannot be reached. */
  readonly labelled: (name: string) => Position | undefined;
  /** Positions that a search for a mate may look at; `positionBudget` unless said. */
  readonly searchBudget?: number;
  /** What all searches of the chapter may look at together; without limit unless given. */
  readonly search?: SearchBudget;
}

/** Positions that are left to be looked at. */
export interface SearchBudget {
  left: number;
}

export interface Verdict {
  /**
   * - `empty`: the claim speaks of something that is not there, such as `isolated d5` where no
   *   pawn stands on d5. It is false, and so is its denial.
   * - `undecided`: a search was stopped. That is reported, never passed over.
   */
  readonly holds: boolean | 'empty' | 'undecided';
  /** Why, in one English clause about the board, without a full stop. */
  readonly because: string;
  /** The claim of this kind that is true here, where there is one to name. */
  readonly instead?: string;
}

/** A position and a claim: a test, and a picture in the handbook. */
export interface ClaimExample {
  readonly fen: string;
  /** The claim as an author writes it; it may be denied. */
  readonly claim: string;
  readonly holds: Verdict['holds'];
  readonly because?: string;
  /** What makes the example worth showing, as a sentence: above all for borderline cases. */
  readonly note?: string;
  /** The side of the course; default `white`. */
  readonly side?: Side;
  /** Moves that the course plays from here, in SAN. */
  readonly covered?: readonly string[];
  /** Moves played from `fen`, in SAN: the claim is judged after them. */
  readonly moves?: readonly string[];
  /** Named positions, as FEN. */
  readonly labels?: Readonly<Record<string, string>>;
}

export interface ClaimDefinition<Arguments> {
  /** What the claim begins with. */
  readonly name: string;
  /** How it is written, by example; the first form is the usual one. */
  readonly usage: readonly string[];
  /** Markdown for the handbook: the one precise meaning, for either colour and at the edges. */
  readonly definition: string;
  readonly source: string;
  readonly examples: readonly ClaimExample[];
  /** Reads the words behind the name. */
  readonly parse: (words: ArgumentReader) => Arguments;
  readonly judge: (context: ClaimContext, parsed: Arguments) => Verdict;
}

export type Judge = (context: ClaimContext) => Verdict;

/** A kind of claim, whatever its arguments are. */
export interface ClaimKind extends Omit<ClaimDefinition<unknown>, 'parse' | 'judge'> {
  readonly read: (words: ArgumentReader) => Judge;
}

export function defineClaim<Arguments>(definition: ClaimDefinition<Arguments>): ClaimKind {
  const { parse, judge, ...rest } = definition;
  return {
    ...rest,
    read(words) {
      const parsed = parse(words);
      words.finish();
      return (context) => judge(context, parsed);
    },
  };
}

/** A verdict with its reason for either case. */
export function verdict(holds: boolean, yes: string, no: string): Verdict {
  return { holds, because: holds ? yes : no };
}

export function yes(because: string): Verdict {
  return { holds: true, because };
}

export function no(because: string, instead?: string): Verdict {
  return { holds: false, because, ...(instead === undefined ? {} : { instead }) };
}

export function empty(because: string, instead?: string): Verdict {
  return { holds: 'empty', because, ...(instead === undefined ? {} : { instead }) };
}
