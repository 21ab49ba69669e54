/**
 * The model of a course: plain, immutable, serialisable data. Everything after `model` reads
 * only this; nothing after it opens a Markdown file.
 */
import type { PhrasingContent, Root, Text } from 'mdast';
import type {
  Color,
  MoveFault,
  PieceKind,
  PiecesLanguage,
  PlayedMove,
  Position,
  Square,
} from '../chess/index.ts';
import type { Place } from '../diagnostics/index.ts';
import type {
  CourseProblem,
  CourseSettings,
  Learn,
  MissingId,
  NewsSyntax,
  NodeRef,
  PageFront,
  PlaceOnShelf,
  Theme,
  WrittenNode,
} from '../read/index.ts';

export type {
  BlockNode,
  CommentNode,
  CourseLinkNode,
  CourseProblem,
  CourseSettings,
  DirectiveName,
  DirectiveNode,
  EngineMargins,
  Learn,
  NodeRef,
  PageFront,
  PlaceOnShelf,
  PositionLinkNode,
  ProseMove,
  ProseMovesNode,
  Range,
  Side,
  Theme,
  VariationNode,
  WrittenInFile,
  WrittenNode,
} from '../read/index.ts';

export interface Course {
  readonly settings: CourseSettings;
  readonly chapters: readonly Chapter[];
  /**
   * Documents that are played and checked like chapters but are none, such as an imprint, in the order of their file
   * names.
   */
  readonly pages: readonly Page[];
  /** The latest first. */
  readonly news: readonly News[];
  /** Every named position; of a name given twice, the first. */
  readonly labels: Readonly<Record<string, Label>>;
  /** Where each setting stands in `course.yaml`, by its path such as `rules.move-number`. */
  readonly settingPlaces: Readonly<Record<string, Place>>;
  readonly missingId?: MissingId;
  /** The course's own look, where it has one. */
  readonly theme?: Theme;
  /** The graph of positions over all `moves` blocks of its chapters, by `Position.key`. */
  readonly graph: Readonly<Record<string, GraphPosition>>;
  /** Where links into other courses of the shelf lead, by `course/label`. */
  readonly siblings?: Readonly<Record<string, PlaceOnShelf>>;
  /** Problems outside chapters and pages: in settings, files, news. */
  readonly problems: readonly CourseProblem[];
}

export interface Chapter {
  /** From the front matter, else from the file name; unique in the course; used in addresses. */
  readonly id: string;
  readonly title: string;
  readonly summary?: string;
  /** What practice asks of it, where it says so. */
  readonly learn?: Learn;
  /** Whether its author has not finished it: it is checked and not published. */
  readonly draft?: true;
  /** Where it is published, for a page. */
  readonly page?: PageFront;
  /** The language of its words, if it differs from the course's. */
  readonly language?: string;
  /** The letters that its moves are written in, where they are not those of SAN. */
  readonly pieces?: PiecesLanguage;
  /** Path relative to the course folder, with `/`: what references name the chapter by. */
  readonly file: string;
  /** Its title and its summary, as far as it has them: the words with their places. */
  readonly frontTexts: readonly (readonly Text[])[];
  /** The Markdown tree, blocks and directives replaced by the nodes of `read/nodes.ts`. */
  readonly body: Root;
  /** Paths of the pictures it shows, relative to the course folder; `url` of its images is this. */
  readonly media: readonly string[];
  readonly blocks: readonly Block[];
  /** What its texts speak of. */
  readonly spoken: SpokenOf;
  /** The names that it gives to positions, in the order of the text. */
  readonly names: readonly GivenName[];
  /** What could not be read or played in it. */
  readonly problems: readonly CourseProblem[];
}

/** A document that is no chapter: left out of lists of chapters, practice and counts. */
export interface Page extends Chapter {
  readonly page: PageFront;
}

/** What the directives and moves in a chapter's texts speak of, by their `id`. */
export interface SpokenOf {
  /** The node that a directive speaks of; none for a directive about its line alone. */
  readonly directives: Readonly<Record<number, NodeRef>>;
  /** The node of each move; null where no block of the chapter has it. */
  readonly moves: Readonly<Record<number, readonly (NodeRef | null)[]>>;
  /** The moves that were not searched for, which has a finding of its own. */
  readonly unsought: readonly number[];
}

/** `:here[…]`: a name that a chapter gives, and the position it stands for. */
export interface GivenName {
  readonly name: string;
  /** What readers see in its place. */
  readonly title?: string;
  readonly place: Place;
  /** Absent where no move is shown. */
  readonly ref?: NodeRef;
  /** Absent where the move cannot be played. */
  readonly position?: Position;
  /** The move that led there. */
  readonly move?: { readonly from: Square; readonly to: Square };
  /** The place of that move; for a start position the first character of its block. */
  readonly shown?: Place;
  /** The castlings that led there, as far as the course shows them. */
  readonly castled: readonly PlayedMove[];
  /** The name that its block starts from. */
  readonly from?: string;
}

/** What the author tells students of a new edition. */
export interface News extends Omit<NewsSyntax, 'problems' | 'blocks'> {
  /** Boards of named positions are resolved when shown, since the name may be gone by then. */
  readonly blocks: readonly DiagramBlock[];
}

export type Block = MovesBlock | DiagramBlock | ExerciseBlock | GameBlock | PatternBlock;

interface BlockBase {
  /** Unique in its chapter. A hash of its text, so that blocks before it do not change it. */
  readonly key: string;
  /** The chapter's file. */
  readonly chapter: string;
  readonly place: Place;
  /** The side at the bottom of the board. */
  readonly view: Color;
  /** The place of the FEN that it starts from. */
  readonly fen?: Place;
  /** The castlings on the way to its start, in the blocks that it starts from. */
  readonly castled: readonly PlayedMove[];
}

/**
 * A tree of moves, flattened: `nodes[0]` is the start position and has no move; parents precede their children, and
 * nodes are in the order of the text.
 */
export interface MovesBlock extends BlockBase {
  readonly kind: 'moves';
  readonly nodes: readonly MoveNode[];
  /** What practice asks of it, where it says so itself. */
  readonly learn?: Learn;
  /** Label of `from="…"`, if the block starts from one. */
  readonly from?: LabelUse;
  /** Tag pairs of a pasted game. */
  readonly tags: Readonly<Record<string, string>>;
  /** Where the value of each tag stands. */
  readonly tagPlaces: Readonly<Record<string, Place>>;
  readonly result?: string;
  /** Whether some of its text could not be read, so that nobody knows where its lines were meant to end. */
  readonly unread?: true;
}

/** A written move and the result of playing it; `index` counts in `MovesBlock.nodes`. */
export interface MoveNode extends WrittenNode {
  /** Absent for the start position and for a move that cannot be played. */
  readonly move?: PlayedMove;
  /** Why the move cannot be played; `after-fault` where an earlier move of the line could not. */
  readonly fault?: MoveFault | { readonly kind: 'after-fault' };
  /** The position after the move; absent where there is a fault. */
  readonly position?: Position;
  readonly marks: readonly Square[];
  readonly arrows: readonly Arrow[];
  readonly labels: readonly string[];
  /** `:claim`, `:same`, `:later`, `:end`, `:option`, `:learn` said of this node, in comments or prose. */
  readonly statements: readonly Statement[];
}

export const arrowMeanings = ['plan', 'threat', 'guard'] as const;
export type ArrowMeaning = (typeof arrowMeanings)[number];

export interface Arrow {
  readonly meaning: ArrowMeaning;
  readonly from: Square;
  readonly to: Square;
  /** Where it is written. */
  readonly place: Place;
}

export const statementNames = ['claim', 'same', 'later', 'end', 'option', 'learn'] as const;

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
  /** What readers see in its place; they never see the name. */
  readonly title?: string;
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
  /**
   * The start of `fen="…"` or `after="…"` and the moves of `after`; empty with `at`, unless an exercise has a move
   * `before` it.
   */
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

/** A position of the course and everywhere it occurs. */
export interface GraphPosition {
  /** `Position.key`. */
  readonly key: string;
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
  /** What the student must find: the moves of his side in any of these lines. */
  readonly answer: readonly ExerciseLine[];
  /** Good moves that are not the answer. */
  readonly also: readonly ExerciseLine[];
  readonly wrong: readonly ExerciseLine[];
  readonly hints: readonly (readonly PhrasingContent[])[];
  /** The move that the other side makes first: the last of `nodes`. */
  readonly before?: MoveNode;
}

/** `nodes[0]` is the exercise's position, `nodes[1]` the move that is spoken of. */
export type ExerciseLine = readonly MoveNode[];

/** A whole game. It illustrates: its moves are neither advice nor replies. */
export interface GameBlock extends BlockBase {
  readonly kind: 'game';
  readonly nodes: readonly MoveNode[];
  readonly tags: Readonly<Record<string, string>>;
  readonly result?: string;
  /** Where the value of each tag stands. */
  readonly tagPlaces: Readonly<Record<string, Place>>;
  /** The game's file, relative to the course folder. */
  readonly file: string;
  /** The first and the last node of the main line that is shown. */
  readonly first: number;
  readonly last: number;
  /** What `from` and `to` say: numbers of moves, or names. */
  readonly limits: readonly LabelUse[];
  /** Limits that the game does not have. */
  readonly unknownLimits: readonly LabelUse[];
  /** The last position of the main line that the course knows; absent if it knows none. */
  readonly leaves?: GameExit;
}

export interface GameExit {
  /** The game's node with that position. */
  readonly node: number;
  /** An occurrence of that position in the course. */
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
  /** Moves in SAN, one of which is advised wherever the pattern stands. */
  readonly advice: readonly PatternMove[];
  /** Claims that hold wherever the pattern occurs. */
  readonly claims: readonly Statement[];
  readonly text: readonly PhrasingContent[];
  /** Where advice, claims and text do not hold. */
  readonly except: readonly LabelUse[];
  /** The first field of a FEN: only the pattern's own pieces. */
  readonly placement: string;
  readonly nodes: readonly MoveNode[];
  /** Keys of the positions of the course that match. */
  readonly matches: readonly PatternMatch[];
}

/** A move that belongs to no single position, as written. */
export interface PatternMove {
  readonly san: string;
  readonly place: Place;
}

export interface PatternMatch {
  readonly key: string;
  /** Whether it matches with the colours exchanged. */
  readonly reversed: boolean;
}
