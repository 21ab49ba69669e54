/**
 * The model of a course: plain, immutable, serialisable data. Everything after `model` reads
 * only this; nothing after it opens a Markdown file.
 */
import type { PhrasingContent, Root } from 'mdast';
import type { Color, MoveFault, PieceKind, PlayedMove, Position, Square } from '../chess/types.ts';
import type { Place } from '../diagnostics/place.ts';
import type { NodeRef } from '../read/nodes.ts';
import type { CourseProblem, CourseSettings, MissingId, NewsDraft } from '../read/types.ts';

export type * from '../read/nodes.ts';
export type { CourseProblem, CourseSettings, Side } from '../read/types.ts';

export interface Course {
  readonly settings: CourseSettings;
  readonly chapters: readonly Chapter[];
  /** The latest first. */
  readonly news: readonly News[];
  /** Every named position; where a name stands twice, the first. */
  readonly labels: Readonly<Record<string, Label>>;
  /** Labels that were given again: the later places. */
  readonly repeatedLabels: readonly { readonly name: string; readonly place: Place }[];
  /** Names that are given where no move is shown; each has a problem. */
  readonly unplacedLabels: readonly string[];
  /** Where each setting stands in `course.yaml`, by its path such as `rules.move-number`. */
  readonly settingPlaces: Readonly<Record<string, Place>>;
  readonly missingId?: MissingId;
  /** The graph of positions over all `moves` blocks, by `Position.key`. */
  readonly graph: Readonly<Record<string, GraphPosition>>;
  /** What could not be read at all: settings, files, front matter, attributes. */
  readonly problems: readonly CourseProblem[];
}

export interface Chapter {
  /** From the front matter, else from the file name; unique in the course; used in addresses. */
  readonly id: string;
  readonly index: number;
  readonly title: string;
  readonly summary?: string;
  /** Path relative to the course folder, with `/`. */
  readonly file: string;
  /** The Markdown tree, blocks and directives replaced by the nodes of `read/nodes.ts`. */
  readonly body: Root;
  /** Paths of the pictures it shows, relative to the course folder; `url` of its images is this. */
  readonly media: readonly string[];
  readonly blocks: readonly Block[];
}

/** What the author tells students of a new edition. */
export type News = Omit<NewsDraft, 'problems'>;

export type Block = MovesBlock | DiagramBlock | ExerciseBlock | GameBlock | PatternBlock;

interface BlockBase {
  /** Index in `Chapter.blocks`. */
  readonly index: number;
  readonly chapter: number;
  readonly place: Place;
  /** The side at the bottom of the board. */
  readonly view: Color;
}

/**
 * A tree of moves, flattened: `nodes[0]` is the start position and has no move; a parent
 * always stands before its children, and nodes stand in the order of the text.
 */
export interface MovesBlock extends BlockBase {
  readonly kind: 'moves';
  readonly nodes: readonly MoveNode[];
  /** Label of `from="…"`, if the block starts from one. */
  readonly from?: LabelUse;
  /** Tag pairs of a pasted game. */
  readonly tags: Readonly<Record<string, string>>;
  readonly result?: string;
}

export interface MoveNode {
  /** Index in `MovesBlock.nodes`. */
  readonly index: number;
  /** Index of the position this was played in; absent for the start position. */
  readonly parent?: number;
  /** Indices of the moves from here: the first continues the line, others are variations. */
  readonly children: readonly number[];
  /** How deep in variations: 0 is the main line. */
  readonly depth: number;
  /** Absent for the start position. */
  readonly written?: WrittenInFile;
  /** Absent for the start position and for a move that cannot be played. */
  readonly move?: PlayedMove;
  /** Why the move cannot be played; `after-fault` where an earlier move of the line could not. */
  readonly fault?: MoveFault | { readonly kind: 'after-fault' };
  /** The position after the move; absent where there is a fault. */
  readonly position?: Position;
  /** Numeric annotation glyphs, in the order written. */
  readonly glyphs: readonly number[];
  /** What follows the move in the text: comments and variations in order. */
  readonly after: readonly (CommentNode | VariationNode)[];
  readonly marks: readonly Square[];
  readonly arrows: readonly Arrow[];
  readonly labels: readonly string[];
  /** `:claim`, `:same`, `:later`, `:end`, `:option` said of this node, in comments or prose. */
  readonly statements: readonly Statement[];
}

/** The author's spelling of a move and where it stands. */
export interface WrittenInFile {
  readonly san: string;
  readonly place: Place;
  readonly number?: {
    readonly text: string;
    readonly value: number;
    readonly dots: number;
    readonly place: Place;
  };
  readonly glyphs: readonly {
    readonly text: string;
    readonly nag: number;
    readonly place: Place;
  }[];
}

export interface CommentNode {
  readonly type: 'comment';
  readonly content: readonly PhrasingContent[];
  readonly place: Place;
}

/** A variation on the move it follows: `first` is the index of its first move. */
export interface VariationNode {
  readonly type: 'variation';
  readonly first: number;
  /** Comments that stand in the variation before its first move. */
  readonly before: readonly CommentNode[];
  readonly place: Place;
}

export const arrowMeanings = ['plan', 'threat', 'guard'] as const;
export type ArrowMeaning = (typeof arrowMeanings)[number];

export interface Arrow {
  readonly meaning: ArrowMeaning;
  readonly from: Square;
  readonly to: Square;
}

export const statementNames = ['claim', 'same', 'later', 'end', 'option'] as const;

export interface Statement {
  readonly name: (typeof statementNames)[number];
  readonly argument: string;
  readonly place: Place;
  /** For `same` and `later`: whether the label exists. */
  readonly label?: LabelUse;
}

export interface LabelUse {
  readonly name: string;
  readonly place: Place;
}

export interface Label {
  readonly name: string;
  readonly ref: NodeRef;
  readonly place: Place;
}

/** A block that shows one position. */
export interface PositionBlock extends BlockBase {
  /** Absent where the position could not be made. */
  readonly position?: Position;
  /** The move that led to it, where the block knows one. */
  readonly lastMove?: { readonly from: Square; readonly to: Square };
  /** Label of `at="…"`. */
  readonly at?: LabelUse;
  /** The start of `fen="…"` or `after="…"` and the moves of `after`; empty with `at`. */
  readonly nodes: readonly MoveNode[];
  /** The node whose position is shown: the last of its own, or the one of the label. */
  readonly shows?: NodeRef;
}

/** A still board. */
export interface DiagramBlock extends PositionBlock {
  readonly kind: 'diagram';
  readonly caption: readonly PhrasingContent[];
  readonly alt?: string;
  readonly marks: readonly Square[];
  readonly arrows: readonly Arrow[];
  readonly claims: readonly Statement[];
}

/** A position of the course and everywhere it stands. */
export interface GraphPosition {
  readonly key: string;
  readonly fen: string;
  readonly at: readonly NodeRef[];
  /** The moves played from here anywhere in the course, in order of first appearance. */
  readonly moves: readonly GraphMove[];
}

export interface GraphMove {
  readonly san: string;
  /** Key of the position it leads to. */
  readonly to: string;
  /** The nodes that are this move. */
  readonly at: readonly NodeRef[];
}

/** A question that the student answers on the board. Every line is a tree of its own. */
export interface ExerciseBlock extends PositionBlock {
  readonly kind: 'exercise';
  readonly ask: readonly PhrasingContent[];
  /** What the student must find: the first move of any of these lines; the rest is shown. */
  readonly answer: readonly ExerciseLine[];
  /** Good moves that are not the answer. */
  readonly also: readonly ExerciseLine[];
  readonly wrong: readonly ExerciseLine[];
  readonly hint: readonly PhrasingContent[];
}

/** `nodes[0]` is the exercise's position, `nodes[1]` the move that is spoken of. */
export type ExerciseLine = readonly MoveNode[];

/** A whole game: it illustrates, and its moves are neither advice nor replies. */
export interface GameBlock extends BlockBase {
  readonly kind: 'game';
  readonly nodes: readonly MoveNode[];
  readonly tags: Readonly<Record<string, string>>;
  readonly result?: string;
  /** Where `Result` stands among the tags. */
  readonly resultTag?: { readonly value: string; readonly place: Place };
  /** The game's file, relative to the course folder. */
  readonly file: string;
  /** The first and the last node of the main line that is shown. */
  readonly first: number;
  readonly last: number;
  /** Limits that the game does not have. */
  readonly unknownLimits: readonly LabelUse[];
  /** The last position of the main line that the course knows; absent if it knows none. */
  readonly leaves?: GameExit;
}

export interface GameExit {
  /** The game's node with that position. */
  readonly node: number;
  /** A place of that position in the course. */
  readonly ref: NodeRef;
  /** The game's next move: the one that the course does not have; absent where the game ends. */
  readonly next?: number;
}

/** A placement that positions share: a pawn structure or a piece set-up. */
export interface PatternBlock extends BlockBase {
  readonly kind: 'pattern';
  readonly title: string;
  readonly pieces: readonly {
    readonly color: Color;
    readonly kind: PieceKind;
    readonly square: Square;
  }[];
  readonly empty: readonly Square[];
  readonly at: readonly LabelUse[];
  readonly reversed: boolean;
  /** The first field of a FEN: only the pattern's own pieces. */
  readonly placement: string;
  readonly nodes: readonly MoveNode[];
  /** Keys of the positions of the course that match. */
  readonly matches: readonly PatternMatch[];
}

export interface PatternMatch {
  readonly key: string;
  /** Whether it matches with the colours exchanged. */
  readonly reversed: boolean;
}
