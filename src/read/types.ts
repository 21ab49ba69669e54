/** What the reader hands to the model: syntax with places, nothing played or judged yet. */
import type { PhrasingContent, Root } from 'mdast';
import type { Color, PieceKind, Square } from '../chess/types.ts';
import type { RelatedPlace } from '../diagnostics/index.ts';
import type { Place, Point } from '../diagnostics/place.ts';
import type { MediaFault } from '../media/index.ts';
import type { Comment, Movetext } from '../movetext/types.ts';

/** A text file of the course. `path` is relative to the course folder, with `/`. */
export interface SourceFile {
  readonly path: string;
  /** Without a byte order mark. */
  readonly text: string;
}

/** The files of a course as they were found; unreadable ones are problems, not files. */
export interface CourseFiles {
  readonly settings?: SourceFile;
  readonly chapters: readonly SourceFile[];
  /** The PGN files of `games/`. */
  readonly games: readonly SourceFile[];
  /** Paths of everything in `media/`. */
  readonly media: readonly string[];
  /** Why some of it is not published, by path; absent where nobody looked into the files. */
  readonly unfit?: ReadonlyMap<string, MediaFault>;
  /** The files of `news/`. */
  readonly news?: readonly SourceFile[];
  readonly problems: readonly CourseProblem[];
}

export type Side = Color | 'both';

export interface CourseSettings {
  readonly title: string;
  /**
   * Names the course through all its editions, so that what a reader has practised is found again;
   * made from the title unless given.
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
  readonly notation: 'letters' | 'figurines';
}

/** Something the reader could not make sense of; `rule` is the rule that reports it. */
export interface CourseProblem {
  readonly rule:
    | 'course-setting'
    | 'chapter-unreadable'
    | 'media-unfit'
    | 'move-unreadable'
    | 'news-link';
  readonly place: Place;
  readonly message: string;
  readonly hint: string;
  readonly related?: readonly RelatedPlace[];
}

/** A course whose title names it, since `course.yaml` gives no `id`. */
export interface MissingId {
  /** The title's. */
  readonly place: Place;
  /** Where `id: …` goes, and what stands around it there; absent where no place is safe. */
  readonly gap?: { readonly place: Place; readonly before: string; readonly after: string };
}

export interface CourseDraft {
  readonly settings: CourseSettings;
  readonly settingPlaces: Readonly<Record<string, Place>>;
  readonly missingId?: MissingId;
  readonly chapters: readonly ChapterDraft[];
  readonly news?: readonly NewsDraft[];
  readonly problems: readonly CourseProblem[];
}

export interface ChapterDraft {
  readonly id: string;
  readonly title: string;
  readonly summary?: string;
  readonly file: string;
  readonly body: Root;
  readonly blocks: readonly BlockDraft[];
  readonly media: readonly string[];
  readonly problems: readonly CourseProblem[];
}

/** What an author tells students of a new edition; its links may lead to positions. */
export interface NewsDraft {
  /** The file's name without its ending: the id on the page of all news. */
  readonly name: string;
  readonly title: string;
  /** `2026-11-25`. */
  readonly date: string;
  readonly file: string;
  readonly body: Root;
  readonly media: readonly string[];
  readonly problems: readonly CourseProblem[];
}

export type BlockDraft = MovesDraft | DiagramDraft | ExerciseDraft | GameDraft | PatternDraft;

/** A text with its place, such as an attribute's value. */
export interface PlacedText {
  readonly text: string;
  readonly place: Place;
}

export interface MovesDraft {
  readonly kind: 'moves';
  readonly place: Place;
  readonly view?: Color;
  readonly from?: PlacedText;
  readonly fen?: PlacedText;
  readonly moves: MovetextDraft;
}

/** Movetext and the way from its offsets back to the file. */
export interface MovetextDraft {
  readonly movetext: Movetext;
  /** The file it stands in: the chapter, or a game's own. */
  readonly file: string;
  readonly pointAt: (offset: number) => Point;
  /** The comments' inline Markdown. */
  readonly comments: ReadonlyMap<Comment, PhrasingContent[]>;
}

/** One of three ways to tell a position; none where the author told none. */
export interface PositionDraft {
  readonly at?: PlacedText;
  readonly fen?: PlacedText;
  readonly after?: MovetextDraft;
}

export interface DiagramDraft extends PositionDraft {
  readonly kind: 'diagram';
  readonly place: Place;
  readonly view?: Color;
  readonly caption: PhrasingContent[];
  readonly alt?: string;
  readonly marks: readonly PlacedText[];
  readonly arrows: readonly (PlacedText & { readonly meaning: 'plan' | 'threat' | 'guard' })[];
  readonly claims: readonly PlacedText[];
}

export interface ExerciseDraft extends PositionDraft {
  readonly kind: 'exercise';
  readonly place: Place;
  readonly view?: Color;
  readonly ask: PhrasingContent[];
  readonly answer: readonly MovetextDraft[];
  readonly also: readonly MovetextDraft[];
  readonly wrong: readonly MovetextDraft[];
  readonly hint: PhrasingContent[];
}

export interface GameDraft {
  readonly kind: 'game';
  readonly place: Place;
  readonly view?: Color;
  /** Absent where the file or the game in it is missing. */
  readonly moves?: MovetextDraft | undefined;
  /** The file that the movetext stands in. */
  readonly file: string;
  /** A move number or a label: the first and the last position shown. */
  readonly from?: PlacedText;
  readonly to?: PlacedText;
}

export interface PatternDraft {
  readonly kind: 'pattern';
  readonly place: Place;
  readonly view?: Color;
  readonly title: string;
  readonly pieces: readonly PatternPiece[];
  readonly empty: readonly PlacedText[];
  /** Labels where it must hold. */
  readonly at: readonly PlacedText[];
  /** Whether it also holds with colours exchanged. */
  readonly reversed: boolean;
}

export interface PatternPiece {
  readonly color: Color;
  readonly kind: PieceKind;
  readonly square: Square;
  readonly place: Place;
}
