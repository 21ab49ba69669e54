/** What the reader hands to the model: syntax with places, nothing played or judged yet. */
import type { PhrasingContent, Root } from 'mdast';
import type { Color } from '../chess/types.ts';
import type { Place, Point } from '../diagnostics/place.ts';
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
  /** Paths of everything in `media/`. */
  readonly media: readonly string[];
  readonly problems: readonly CourseProblem[];
}

export type Side = Color | 'both';

export interface CourseSettings {
  readonly title: string;
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
  readonly rule: 'course-setting' | 'chapter-unreadable' | 'move-unreadable';
  readonly place: Place;
  readonly message: string;
  readonly hint: string;
}

export interface CourseDraft {
  readonly settings: CourseSettings;
  readonly settingPlaces: Readonly<Record<string, Place>>;
  readonly chapters: readonly ChapterDraft[];
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

export type BlockDraft = MovesDraft | DiagramDraft;

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
  readonly pointAt: (offset: number) => Point;
  /** The comments' inline Markdown. */
  readonly comments: ReadonlyMap<Comment, PhrasingContent[]>;
}

export interface DiagramDraft {
  readonly kind: 'diagram';
  readonly place: Place;
  readonly view?: Color;
  readonly at?: PlacedText;
  readonly fen?: PlacedText;
  readonly after?: MovetextDraft;
  readonly caption: PhrasingContent[];
  readonly alt?: string;
  readonly marks: readonly PlacedText[];
  readonly arrows: readonly (PlacedText & { readonly meaning: 'plan' | 'threat' | 'guard' })[];
  readonly claims: readonly PlacedText[];
}
