/** What rules of a course's own see: plain data, made of the model, which may change where this may not. */
import type { Color, Position, Square } from '../chess/index.ts';
import type { Place, RelatedPlace } from '../diagnostics/index.ts';
import type { Learn, Side } from '../model/index.ts';

/** A chapter as it is written and played. */
export interface RuleChapter {
  /** `chapters/02-main-line.md` */
  readonly file: string;
  readonly id: string;
  readonly title: string;
  readonly summary?: string;
  readonly draft: boolean;
  readonly learn?: Learn;
  /** Its first line. */
  readonly place: Place;
  /** In its text and in the comments on its moves. */
  readonly words: number;
  /** How long it takes a reader, as its page says. */
  readonly minutes: number;
  readonly headings: readonly {
    readonly depth: number;
    readonly text: string;
    readonly place: Place;
  }[];
  /** Its paragraphs, lists and comments, as plain text, in their order. */
  readonly texts: readonly RuleText[];
  /** The names that it gives to positions. */
  readonly names: readonly {
    readonly name: string;
    readonly title?: string;
    readonly place: Place;
    readonly position?: Position;
  }[];
  readonly blocks: readonly RuleBlock[];
}

export interface RuleText {
  readonly kind: 'text' | 'comment';
  readonly text: string;
  readonly place: Place;
}

export interface RuleBlock {
  readonly kind: 'moves' | 'diagram' | 'exercise' | 'game' | 'pattern';
  readonly place: Place;
  /** The side at the bottom of its board. */
  readonly view: Color;
  /** The position that it shows; of a tree of moves the one that it starts from. */
  readonly position?: Position;
  /** The name that it starts from or shows. */
  readonly from?: string;
  /** Its tree of moves; an exercise also has one for each line. */
  readonly trees: readonly (readonly RuleMove[])[];
}

/** A position in a tree of moves, and the move that led to it: the first of a tree has none. */
export interface RuleMove {
  readonly index: number;
  /** Index of the position that it was played in. */
  readonly parent?: number;
  /** Indices of the moves from here: the first continues the line, the others are variations. */
  readonly children: readonly number[];
  /** How deep in variations; 0 is the main line. */
  readonly depth: number;
  /** Canonical SAN; absent for a start position and a move that cannot be played. */
  readonly san?: string;
  /** `7...Be7` */
  readonly name?: string;
  readonly color?: Color;
  readonly from?: Square;
  readonly to?: Square;
  readonly position?: Position;
  /** Numeric annotation glyphs (NAG). */
  readonly glyphs: readonly number[];
  /** What stands in the comments behind it, as plain text. */
  readonly comment: string;
  readonly labels: readonly string[];
  readonly marks: readonly Square[];
  readonly arrows: readonly {
    readonly meaning: string;
    readonly from: Square;
    readonly to: Square;
  }[];
  /** `:claim`, `:same`, `:later`, `:end`, `:option`, `:learn` of it. */
  readonly statements: readonly {
    readonly name: string;
    readonly argument: string;
    readonly place: Place;
  }[];
  /** Absent for a start position. */
  readonly place?: Place;
}

/** A chapter as the rest of a course knows it. */
export interface ChapterInShort {
  readonly file: string;
  readonly id: string;
  readonly place: Place;
  readonly names: readonly {
    readonly name: string;
    readonly title?: string;
    readonly place: Place;
  }[];
  /** Moves of its `moves` blocks, variations included. */
  readonly moves: number;
}

/** What a rule may ask of the course around a chapter. Positions are named by their `key`. */
export interface RuleCourse {
  readonly side: Side;
  /** As BCP 47. */
  readonly language: string;
  /** What the course advises in a position, in SAN. */
  advice(key: string): string | undefined;
  /** The moves that blocks of the course play from a position, in SAN. */
  covered(key: string): readonly string[];
  /** The position of a name. */
  named(name: string): Position | undefined;
}

/** What a rule reports. */
export interface FoundByRule {
  /** One sentence: what is wrong. */
  readonly message: string;
  /** What to do about it. */
  readonly hint?: string;
  /** A place that the rule was given; the first line of the chapter, or of `course.yaml`, where it is not said. */
  readonly place?: Place;
  readonly related?: readonly RelatedPlace[];
}
