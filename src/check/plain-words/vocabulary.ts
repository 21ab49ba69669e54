/** What the rule must know of a language: one file a language in `languages/`. */
import type { Color, PieceKind, PieceLetters } from '../../chess/index.ts';
import type { FormName } from './forms/index.ts';

/** Everything is the source of a regular expression that ignores capitals, unless said. */
export interface Vocabulary {
  /** The primary subtag of BCP 47. */
  readonly language: string;
  readonly letters: PieceLetters;
  readonly pieces: Readonly<Record<PieceKind, string>>;
  /** The colour of a piece, as an adjective. */
  readonly colors: Readonly<Record<Color, string>>;
  /** The players. */
  readonly sides: Readonly<Record<Color, string>>;
  /** The players as owners, such as `White's`; absent where the language has no such word. */
  readonly owners?: Readonly<Record<Color, string>>;
  /** The side of the course, as its author speaks of it. */
  readonly us: string;
  /** Words for 1, 2, 3 and so on. */
  readonly numbers: readonly string[];
  /** More names for parts of phrases, such as an article, to be used as `<name>`. */
  readonly parts: Readonly<Record<string, string>>;
  /** Words that make a sentence speak of what is not on the board: plans, conditions, other times, other lines. */
  readonly unreal: string;
  /** Articles of a piece that need not be there, such as “a knight on e5”. */
  readonly indefinite: string;
  /** Verbs that bring a piece to the square that is named behind it. */
  readonly placing: string;
  /** What only a piece that stands there can do or suffer, right behind its name, though it is still to come. */
  readonly presupposing: string;
  /** Words by which a sentence denies something. */
  readonly denial: string;
  /** Words that begin another main clause, behind a comma. */
  readonly joint: string;
  /** Words by which a sentence speaks of other games, openings or chapters. */
  readonly elsewhere: string;
  /** How a sentence tells where in the course something stands. */
  readonly order: {
    /** Of a link's own words. */
    readonly nextChapter: string;
    readonly previousChapter: string;
    /** Behind a link, or at its end. */
    readonly below: string;
    readonly above: string;
    /** Anywhere in a sentence with one link. */
    readonly laterHere: string;
    readonly earlierHere: string;
  };
  /** What is looked for before anything is taken apart, and the phrases of each form. */
  readonly phrases: Readonly<Partial<Record<FormName, Phrases>>>;
}

export interface Phrases {
  /** Without this the sentence cannot hold any of them. */
  readonly key: RegExp;
  /**
   * Sources with names in angle brackets: `<piece>`, `<square>`, `<squares>`, `<file>`, `<color>`, `<side>`,
   * `<owner>`, `<number>`, `<move>`, and those of `parts`.
   */
  readonly forms: readonly string[];
}
