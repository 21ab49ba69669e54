/**
 * What the reader hands to the model: plain, immutable data that can be cloned and written to a disk; syntax with
 * places, nothing played or judged yet.
 */
import type { PhrasingContent, Root, Text } from 'mdast';
import type { Color, PieceKind, PiecesLanguage, Square } from '../chess/index.ts';
import type { Fix, Place, RelatedPlace } from '../diagnostics/index.ts';
import type { ThemeSyntax } from '../look/index.ts';
import type { MediaFault, PictureShape } from '../media/index.ts';
import type { PageFront } from './front-matter/page-front.ts';

export type { PageFront } from './front-matter/page-front.ts';

/** A text file of the course. `path` is relative to the course folder, with `/`. */
export interface SourceFile {
  readonly path: string;
  /** Without a byte order mark. */
  readonly text: string;
  /** Of a chapter in a translation that stands there in the original's words: their language. */
  readonly language?: string;
  /** Of a translated chapter: the original's headings in order, of which the addresses of its page are made. */
  readonly headings?: readonly string[];
  /** The letters that its moves are written in, where they are others than the course's. */
  readonly pieces?: PiecesLanguage;
}

/** The files of `translations/TAG/`; their paths begin with that. */
export interface TranslationFiles {
  /** BCP 47, as the folder is named. */
  readonly tag: string;
  /** Such as `translations/de`. */
  readonly folder: string;
  readonly settings?: SourceFile;
  readonly chapters: readonly SourceFile[];
  readonly pages: readonly SourceFile[];
  readonly news: readonly SourceFile[];
  /** What it was made of: `origin.json`. */
  readonly origin?: SourceFile;
}

/** Marks the files of a course as those of one of its translations. */
export interface InTranslation {
  readonly tag: string;
  /** Of the course: what a reader has practised is the same in every language. */
  readonly id: string;
  /** The words of its settings. */
  readonly words: Partial<CourseSettings>;
}

/** The files of a course as they were found; unreadable ones are problems, not files. */
export interface CourseFiles {
  readonly settings?: SourceFile;
  readonly chapters: readonly SourceFile[];
  /** The PGN files of `games/`. */
  readonly games: readonly SourceFile[];
  /** Paths of everything in `media/`. */
  readonly media: readonly string[];
  /** Why some of these files are not published, by path; absent where nobody looked into them. */
  readonly unfit?: ReadonlyMap<string, MediaFault>;
  /** The shape of the pictures that `course.yaml` names, by path; absent where nobody looked into them. */
  readonly pictures?: ReadonlyMap<string, PictureShape>;
  /** The files of `news/`. */
  readonly news?: readonly SourceFile[];
  /** The files of `pages/`. */
  readonly pages?: readonly SourceFile[];
  /** The files of `rules/`, code of the author's own; absent where nobody looked for code. */
  readonly rules?: readonly SourceFile[];
  /** Engine results: `facts/engine.tsv`, and those in the user's cache. */
  readonly facts?: readonly SourceFile[];
  readonly translations?: readonly TranslationFiles[];
  /** Present for the files of a translation. */
  readonly translation?: InTranslation;
  /** The shelf that the course is on; `none` for no shelf, absent where nobody looked. */
  readonly shelf?: ShelfAround | 'none';
  /** `theme.css`: the course's own look. */
  readonly theme?: SourceFile;
  readonly problems: readonly CourseProblem[];
}

/** What a course may know of the other courses on its shelf. */
export interface ShelfAround {
  /** The id of the course itself. */
  readonly own: string;
  /** The others, by their ids. */
  readonly courses: ReadonlyMap<string, CourseOnShelf>;
  /** Whether they are published beside it. */
  readonly together: boolean;
  /** Address of the shelf, without a final `/`. */
  readonly site?: string;
}

export interface CourseOnShelf {
  readonly title: string;
  /** Its named positions, by their names. */
  readonly names: Readonly<Record<string, NameOnShelf>>;
}

export interface NameOnShelf {
  /** Its address from the course's folder: `main-line.html#tabiya`. */
  readonly address: string;
  /** What readers see in its place. */
  readonly title?: string;
}

/** Where a link into another course leads. */
export interface PlaceOnShelf {
  /** The title of the course. */
  readonly course: string;
  /** The author's title of the position. */
  readonly title?: string;
  /** As seen from the folder of the course that links there, where the two are published together. */
  readonly beside?: string;
  /** The whole address, where the shelf has one. */
  readonly web?: string;
}

export type Side = Color | 'both';

/** What practice asks of moves: all; the main line without its variations; none of them. */
export type Learn = 'all' | 'main' | 'none';

export interface CourseSettings {
  readonly title: string;
  /**
   * Identifies the course in all its editions, so that readers keep what they have practised; default: made from the
   * title.
   */
  readonly id?: string;
  readonly side: Side;
  readonly author?: string;
  readonly summary?: string;
  /** BCP 47. */
  readonly language: string;
  /** Address that the course will be published at, without a final `/`. */
  readonly site?: string;
  readonly licence?: string;
  readonly rules: Readonly<Record<string, 'error' | 'warning' | 'off'>>;
  /** Files of `rules/` that are run: rules and claims of the author's own. */
  readonly ownRules: readonly string[];
  /** How moves are written: with the letters of the course's language, with the English ones, with figurines. */
  readonly notation: 'letters' | 'english' | 'figurines';
  /** The language of the letters that moves are written with in its files; English unless given. */
  readonly pieces?: PiecesLanguage;
  /** The name of the position where the course's subject starts. */
  readonly begins?: string;
  /** The name of the position on the first page, on cards and on the cover of the book. */
  readonly cover?: string;
  /** Whom the course is for. */
  readonly for?: string;
  /** What a student knows in the end, a sentence each. */
  readonly teaches?: readonly string[];
  /** The author's sign, from `media/`; where no other is given, the same on every ground. */
  readonly logo?: Logo;
  /** A square picture from `media/`, SVG or PNG: the icon of tabs and start pages. */
  readonly icon?: string;
  /** A picture from `media/` that stands beside links to the course. */
  readonly card?: string;
  /** Who vouches that the e-book meets EPUB Accessibility 1.1, at WCAG 2.2 AA. */
  readonly certified?: string;
  /** When to report an engine's results; the check has defaults. */
  readonly engine?: Partial<EngineMargins>;
}

/** Pictures of `media/`, by the ground that they stand on. */
export interface Logo {
  readonly light: string;
  readonly dark?: string;
  /** On the cover of the first page. */
  readonly cover?: string;
}

/** Differences between moves, in pawns. */
export interface EngineMargins {
  /** What advice may lose against the best move. */
  readonly margin: number;
  /** What a move of the other side may lose without a sign. */
  readonly bad: number;
  /** How much better an uncovered reply may be than all that are covered. */
  readonly reply: number;
  /** How close two moves are that count as equally good. */
  readonly equal: number;
}

/** Something the reader could not interpret; `rule` reports it. */
export interface CourseProblem {
  readonly rule:
    | 'course-setting'
    | 'shelf-setting'
    | 'chapter-unreadable'
    | 'facts-unreadable'
    | 'media-unfit'
    | 'move-unreadable'
    | 'news-link'
    | 'picture-shape'
    | 'theme-unreadable'
    | 'translation-differs'
    | 'translation-open'
    | 'translation-stale'
    | 'own-rule';
  readonly place: Place;
  readonly message: string;
  readonly hint: string;
  readonly related?: readonly RelatedPlace[];
  readonly fixes?: readonly Fix[];
}

/** A course without an `id`, which is named by its title. */
export interface MissingId {
  /** The title's. */
  readonly place: Place;
  /** Where `id: …` goes, and what to write around it; absent where no place is safe. */
  readonly gap?: { readonly place: Place; readonly before: string; readonly after: string };
}

/** What `theme.css` gives to a course, and where. */
export type Theme = Omit<ThemeSyntax, 'problems'>;

export interface CourseSyntax {
  readonly settings: CourseSettings;
  readonly settingPlaces: Readonly<Record<string, Place>>;
  readonly missingId?: MissingId;
  readonly chapters: readonly ChapterSyntax[];
  readonly pages?: readonly ChapterSyntax[];
  readonly news?: readonly NewsSyntax[];
  /** Where links into other courses lead, by `course/label`; absent if none leads anywhere. */
  readonly siblings?: Readonly<Record<string, PlaceOnShelf>>;
  readonly theme?: Theme;
  readonly problems: readonly CourseProblem[];
}

export interface ChapterSyntax {
  readonly id: string;
  readonly title: string;
  readonly summary?: string;
  /** What practice asks of it; if absent, decided by what its blocks start from. */
  readonly learn?: Learn;
  /** Whether its author has not finished it: it is checked and not published. */
  readonly draft?: true;
  /** For a page: where it is published. A page is read like a chapter and is none. */
  readonly page?: PageFront;
  /** The language of its words, if it differs from the course's. */
  readonly language?: string;
  /** The letters that its moves are written in, where they are not those of SAN. */
  readonly pieces?: PiecesLanguage;
  readonly file: string;
  /** Its title and its summary, as far as it has them: the words with their places. */
  readonly frontTexts: readonly (readonly Text[])[];
  readonly body: Root;
  readonly blocks: readonly BlockSyntax[];
  readonly media: readonly string[];
  readonly problems: readonly CourseProblem[];
}

/** News of an edition for students; its links may lead to positions. */
export interface NewsSyntax {
  /** The file's name without its ending: the id on the page of all news. */
  readonly name: string;
  readonly title: string;
  /** `2026-11-25`. */
  readonly date: string;
  readonly file: string;
  readonly body: Root;
  /** The boards that it shows. */
  readonly blocks: readonly DiagramSyntax[];
  readonly media: readonly string[];
  readonly problems: readonly CourseProblem[];
}

/** `key` names the block in its chapter: it is made of the block's text, so blocks before it do not change it. */
export type BlockSyntax = MovesSyntax | DiagramSyntax | ExerciseSyntax | GameSyntax | PatternSyntax;

/** A text with its place, such as an attribute's value. */
export interface PlacedText {
  readonly text: string;
  readonly place: Place;
}

export interface MovesSyntax {
  readonly kind: 'moves';
  readonly key: string;
  readonly place: Place;
  readonly view?: Color;
  /** What practice asks of it, where it says so itself. */
  readonly learn?: Learn;
  readonly from?: PlacedText;
  readonly fen?: PlacedText;
  /** Set where an attribute could not be read, which may have named the start position. */
  readonly startInDoubt?: true;
  readonly moves: TreeSyntax;
}

/**
 * A tree of moves as written, flattened: `nodes[0]` is the start position and has no move; parents precede their
 * children, and nodes are in the order of the text. Nothing is played.
 */
export interface TreeSyntax {
  /** The file it stands in: the chapter, or a game's own. */
  readonly file: string;
  readonly nodes: readonly WrittenNode[];
  /** Every comment in the order of the text, with the node whose position it speaks of. */
  readonly comments: readonly { readonly node: number; readonly content: PhrasingContent[] }[];
  /** The tag pairs of a pasted game. */
  readonly tags: readonly TagSyntax[];
  readonly result?: string;
  /** The first place that could not be read. */
  readonly unread?: Place;
}

export interface TagSyntax {
  readonly name: string;
  readonly value: string;
  /** The value's. */
  readonly place: Place;
}

export interface WrittenNode {
  /** Index in `TreeSyntax.nodes`. */
  readonly index: number;
  /** Index of the position this was played in; absent for the start position. */
  readonly parent?: number;
  /** Indices of the moves from here: the first continues the line, others are variations. */
  readonly children: readonly number[];
  /** How deep in variations: 0 is the main line. */
  readonly depth: number;
  /** Absent for the start position. */
  readonly written?: WrittenInFile;
  /** Numeric annotation glyphs, in the order written. */
  readonly glyphs: readonly number[];
  /** What follows the move in the text: comments and variations in order. */
  readonly after: readonly (CommentNode | VariationNode)[];
}

/** The author's spelling of a move, in the letters of SAN, and where it stands. */
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

/** A position, given in one of three ways, or in none. */
export interface PositionSyntax {
  readonly at?: PlacedText;
  readonly fen?: PlacedText;
  readonly after?: TreeSyntax;
}

export interface DiagramSyntax extends PositionSyntax {
  readonly kind: 'diagram';
  readonly key: string;
  readonly place: Place;
  readonly view?: Color;
  readonly caption: PhrasingContent[];
  readonly alt?: string;
  readonly marks: readonly PlacedText[];
  readonly arrows: readonly (PlacedText & { readonly meaning: 'plan' | 'threat' | 'guard' })[];
  readonly claims: readonly PlacedText[];
}

export interface ExerciseSyntax extends PositionSyntax {
  readonly kind: 'exercise';
  readonly key: string;
  readonly place: Place;
  readonly view?: Color;
  readonly ask: PhrasingContent[];
  readonly answer: readonly TreeSyntax[];
  readonly also: readonly TreeSyntax[];
  readonly wrong: readonly TreeSyntax[];
  /** Each is asked for by itself. */
  readonly hints: readonly PhrasingContent[][];
  /** Whether the last move of `after` was given by `before`: then `after` may stand beside a name or a FEN. */
  readonly before?: true;
}

export interface GameSyntax {
  readonly kind: 'game';
  readonly key: string;
  readonly place: Place;
  readonly view?: Color;
  /** Absent where the file or the game in it is missing. */
  readonly moves?: TreeSyntax | undefined;
  /** The file that the movetext stands in. */
  readonly file: string;
  /** A move number or a label: the first and the last position shown. */
  readonly from?: PlacedText;
  readonly to?: PlacedText;
}

export interface PatternSyntax {
  readonly kind: 'pattern';
  readonly key: string;
  readonly place: Place;
  readonly view?: Color;
  readonly title: string;
  readonly pieces: readonly PatternPiece[];
  readonly empty: readonly PlacedText[];
  /** Labels where it must hold. */
  readonly at: readonly PlacedText[];
  /** Whether it also holds with colours exchanged. */
  readonly reversed: boolean;
  /** Moves in SAN, one of which is advised wherever it stands. */
  readonly advice: readonly PlacedText[];
  /** What is claimed wherever it stands. */
  readonly claims: readonly PlacedText[];
  readonly text: PhrasingContent[];
  /** Labels where advice, claims and text do not hold. */
  readonly except: readonly PlacedText[];
}

export interface PatternPiece {
  readonly color: Color;
  readonly kind: PieceKind;
  readonly square: Square;
  readonly place: Place;
}
