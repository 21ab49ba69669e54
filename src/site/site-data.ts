/**
 * What the pages show: plain data, rendered or checked before. The pages read nothing else, so what is
 * in here is all that a page depends on.
 */
import type { Color, Square } from '../chess/index.ts';
import type { ShelfLink } from '../contract/index.ts';
import type { ShelfPageData } from './shelf/shelf-data.ts';

/** What every page of a course has: its head, its foot, and the way to the other pages. */
export interface SiteFrame {
  /** The course through all its editions: what a browser keeps of it is kept by this name. */
  readonly course: string;
  readonly language: string;
  readonly title: string;
  /** What stands before and behind the first colon of the title. */
  readonly shortTitle: string;
  readonly subtitle?: string;
  readonly side: 'white' | 'black' | 'both';
  readonly notation: 'letters' | 'english' | 'figurines';
  readonly author?: string;
  readonly summary?: string;
  /** Whom the course is for, and what they know in the end. */
  readonly audience?: string;
  readonly teaches?: readonly string[];
  readonly licence?: string;
  /** Address that the site will have, without a final `/`. */
  readonly site?: string;
  /** Path that the site will have on its host; only the page for missing addresses needs it. */
  readonly base?: string;
  /** Whether the site has a worker that keeps it for reading offline. */
  readonly offline: boolean;
  readonly assets: AssetPaths;
  /** Path of the picture for links to the course. */
  readonly card: string;
  /** Paths of the icons of a browser's tab and of a phone's start page. */
  readonly icons: { readonly tab: string; readonly touch: string };
  /** Colours of the paper, for what a browser draws around a page. */
  readonly sheet: { readonly light: string; readonly dark: string };
  /** Colours of the cover, likewise. */
  readonly cloth: { readonly light: string; readonly dark: string };
  /** Path of the style sheet of the course's own look, where it has one. */
  readonly themeSheet?: string;
  /** The files of type that the first lines need, where the course has a look of its own; else those of the package. */
  readonly firstFonts?: readonly string[];
  /** The author's sign, by the ground that it stands on. */
  readonly logo?: { readonly light: string; readonly dark: string; readonly cover: string };
  /** Whether the course's card is a picture of the author's, whose size is not known. */
  readonly hasOwnCard?: true;
  /** The symbols of all boards, and of a reader's states. */
  readonly sprite: string;
  /** Path of the script with the words of the reader's settings. */
  readonly readerWords: string;
  /** The pages beside the chapters that this course has, as the contents and every head list them. */
  readonly pages: readonly CoursePage[];
  /** The pages of the chapters; none where there are too many to list them on each page. */
  readonly chapters: readonly CoursePage[];
  /** The author's own pages that every page leads to, above its text and below it; absent where there are none. */
  readonly own?: { readonly head: readonly CoursePage[]; readonly foot: readonly CoursePage[] };
  /** Path of the feed of news, where there is one. */
  readonly feed?: string;
  /** The shelf that the course stands on: the way back to it. */
  readonly shelf?: ShelfLink;
  /** There where the site is a shelf of courses: the page that asks for the reader's settings. */
  readonly settingsPage?: string;
  /** The languages that the course is published in, the original first; absent where it is the only one. */
  readonly languages?: readonly SiteLanguage[];
}

/** Where a site will stand, and what it has beside its pages. */
export interface SitePlace {
  readonly assets: AssetPaths;
  readonly offline: boolean;
  readonly site?: string | undefined;
  readonly base?: string | undefined;
  readonly downloads?: readonly Download[];
  readonly shelf?: ShelfLink | undefined;
  /** As in the frame of its pages. */
  readonly languages?: readonly SiteLanguage[] | undefined;
  /** The author's own icon, as an address that holds it. */
  readonly icon?: string | undefined;
}

export interface SiteLanguage {
  /** BCP 47. */
  readonly tag: string;
  /** As its readers call it. */
  readonly name: string;
  /** Of its pages in the site: nothing for the original, else such as `de/`. */
  readonly folder: string;
  /** The chapters' pages that stand there in the original's words. */
  readonly lacks: readonly string[];
}

export interface CoursePage {
  readonly file: string;
  readonly title: string;
  /** One of the few that every head names; the others are behind *All pages*. */
  readonly inHead?: boolean;
  /** Of its title, where that is not in the language of the site. */
  readonly language?: string;
}

/** What each page is given beside the frame, by the name of its file in `pages/`. */
export interface PageData extends ShelfPageData {
  readonly boards: InCourse & {
    readonly path: string;
    readonly embeds: readonly EmbedChapter[];
    readonly embedScript: string;
    /** Where the chapters of a list on several pages stand, on the first of them. */
    readonly parts: readonly {
      /** Relative to this page. */
      readonly href: string;
      readonly title: string;
      readonly count: number;
    }[];
  };
  readonly changes: InCourse & { readonly news: readonly NewsEntry[] };
  readonly chapter: {
    readonly chapter: ChapterPage;
    /** Path of its moves as a file. */
    readonly moves?: string | undefined;
    readonly previous?: ChapterHead | undefined;
    readonly next?: ChapterHead | undefined;
  };
  readonly compare: InCourse & TableScript;
  readonly contents: InCourse & {
    /** A small board for each chapter, if the course is not too long for that. */
    readonly emblems: readonly (string | undefined)[];
    /** Absent where no chapter shows a position. */
    readonly key?: KeyPosition | undefined;
    readonly work: readonly ChapterWork[];
    /** Positions that practice asks; one that stands in several chapters counts once. */
    readonly moves: number;
    readonly downloads: readonly Download[];
  };
  readonly exercises: InCourse & { readonly exercises: readonly ChapterExercises[] };
  readonly missing: InCourse;
  readonly notes: InCourse & TableScript;
  readonly own: { readonly own: OwnPage };
  readonly patterns: InCourse & { readonly patterns: readonly PatternEntry[] };
  readonly positions: InCourse & {
    readonly positions: readonly NamedPositions[];
    readonly transpositions: readonly Transposition[];
  };
  readonly practice: InCourse &
    TableScript & {
      /** Path of the script with what practice needs beside the table (`lookup/course-notes.ts`). */
      readonly notes: string;
      /** Path of the script with the exercises of the course, where it has any. */
      readonly exercises?: string | undefined;
    };
  readonly print: InCourse & {
    readonly handout: Handout;
    /** The position that the course is known by. */
    readonly board?: string | undefined;
    /** Path of the style sheet with the heads of its pages. */
    readonly heads: string;
  };
  readonly search: InCourse & TableScript;
  readonly signs: InCourse & {
    readonly legend: SignsLegend;
    readonly downloads: readonly Download[];
    /** The moves of single chapters, as files. */
    readonly moves: readonly { readonly title: string; readonly path: string }[];
  };
  readonly tree: InCourse & TableScript;
}

/** The position that a course is known by. */
export interface KeyPosition {
  readonly board: string;
  /** `Position.key` */
  readonly key: string;
  readonly view: 'white' | 'black';
  /** From and to: `f8e8`. */
  readonly last?: string | undefined;
  readonly title?: string | undefined;
  /** Such as `after 7...Be7`; absent where no line of the course has the position. */
  readonly words?: string | undefined;
  readonly href: string;
}

export interface ChapterWork {
  /** At least one. */
  readonly minutes: number;
  readonly sections: number;
  readonly exercises: number;
}

/** A page of the course as a whole. */
interface InCourse {
  readonly chapters: readonly ChapterHead[];
}

interface TableScript {
  /** Path of the script with the table of all positions (`lookup/types.ts`). */
  readonly table: string;
}

export type PageName = keyof PageData;

/** What Astro hands to a page and to nothing else (`Astro.locals`). */
export interface PageLocals<Name extends PageName = PageName> {
  readonly page: Name;
  readonly frame: SiteFrame;
  readonly data: PageData[Name];
}

/** What the page of this name was given; for pages only. */
export function pageData<Name extends PageName>(
  name: Name,
  locals: PageLocals,
): PageData[Name] & { readonly frame: SiteFrame } {
  if (locals.page !== name) throw new Error(`${name} was given the data of ${locals.page}`);
  const { frame, data } = locals as PageLocals<Name>;
  return { ...data, frame };
}

/** A file of the site that is not read in a browser. */
export interface Download {
  /** Id of the chapter whose moves it has; absent for the whole course. */
  readonly chapter?: string | undefined;
  readonly kind: 'book' | 'moves';
  /** Relative to the site, with `/`. */
  readonly path: string;
}

/** A file made of the whole course, for other programs or readers. */
export interface SiteDownload extends Download {
  readonly make: () => Promise<Uint8Array>;
  /** A print of all that it is made of. */
  readonly print?: (() => Promise<string>) | undefined;
}

/**
 * Gives the result of an earlier build, else of `make`.
 * @param kind names it in the cache.
 * @param inputs all that it depends on beside this program's code.
 */
export type Keep = (
  kind: string,
  inputs: readonly string[],
  make: () => Promise<Uint8Array>,
) => Promise<Uint8Array>;

/** Paths in the site of what the package's own build made for browsers. */
export interface AssetPaths {
  /** By the names in `scripts/build-browser.mjs`. */
  readonly scripts: Readonly<Record<string, string>>;
  readonly styles: Readonly<Record<string, string>>;
  /** Of the first lines of every page. */
  readonly fonts: readonly string[];
}

/** A file of the site that is none of Astro's pages. */
export interface SiteFile {
  /** Relative to the site, with `/`. */
  readonly path: string;
  readonly content: string;
}

/** A chapter as other pages speak of it. */
export interface ChapterHead {
  readonly id: string;
  readonly number: number;
  readonly title: string;
  readonly summary?: string;
  /** Whether it is shown to its author alone. */
  readonly draft?: true;
  /** Of its words, where the page is in another one. */
  readonly language?: string;
  /** Path of the picture for links to its page. */
  readonly card: string;
}

/** A page of the author's, as search engines are told of it. */
export type OwnHead = Omit<ChapterHead, 'number' | 'card'>;

export interface ChapterPage extends ChapterHead, DocumentText {}

/** A page of the author's that is no chapter. */
export interface OwnPage extends OwnHead, DocumentText {
  /** Whether it has neither boards nor moves. */
  readonly isText: boolean;
}

/** What a chapter and a page of the author's show alike. */
export type DocumentPage = OwnHead & DocumentText;

/** The text of a chapter or of a page of the author's. */
export interface DocumentText {
  /** The text below the title. */
  readonly html: string;
  /** The reading board as it stands before the first move; absent where there is none to follow. */
  readonly board?: string;
  readonly sections: readonly ChapterSection[];
  /** Id of its first exercise. */
  readonly exercise?: string;
  /** Titles of the chapters that its board leads to, by the addresses of their pages. */
  readonly met: Readonly<Record<string, string>>;
}

export interface ChapterSection {
  readonly id: string;
  readonly title: string;
}

export interface EmbedChapter {
  readonly id: string;
  readonly title: string;
  readonly entries: readonly {
    readonly label: string;
    /** Such as `after 7...Be7`. */
    readonly words: string;
    readonly href: string;
    /** The page that is made for frames. */
    readonly page: string;
    /** What is copied into another page. */
    readonly frame: string;
    readonly element: string;
    readonly picture: string;
  }[];
}

export interface NewsEntry {
  readonly id: string;
  readonly title: string;
  /** `2026-11-25`. */
  readonly date: string;
  readonly day: string;
  readonly html: string;
}

/** The whole course on one page, for paper. */
export interface Handout {
  readonly chapters: readonly {
    readonly number: number;
    readonly title: string;
    readonly sections: readonly { readonly id: string; readonly title: string }[];
    readonly summary?: string;
    readonly html: string;
    /** The answers of its exercises, which stand behind the chapters. */
    readonly answers?: string;
    /** Whether it is a page of the author's: those stand at the end, and readers see no number of them. */
    readonly isPage?: true;
  }[];
}

/** A board with words, as pages with many positions show them. */
export interface Plate {
  readonly title?: string;
  /** Such as `after 7...Be7`. */
  readonly words: string;
  /** `in “The pawn on d5”`, where plates of several chapters stand together. */
  readonly chapter?: string;
  readonly href: string;
  readonly view: Color;
  /** Drawn; absent where the page has too many, and `late` is drawn in the browser. */
  readonly board?: string;
  readonly late?: {
    /** The first field of the FEN. */
    readonly placement: string;
    readonly lastMove?: { readonly from: Square; readonly to: Square } | undefined;
  };
  /** What practice asks here: the key of the position that is asked, and the course's moves there. */
  readonly asked?: { readonly key: string; readonly advice: readonly string[] };
}

export interface NamedPositions {
  readonly chapter: string;
  /** Names the group on the page. */
  readonly id: string;
  readonly page: string;
  readonly plates: readonly Plate[];
}

/** A position in which different orders of moves meet. */
export interface Transposition {
  readonly plate: Plate;
  /** The last move that all ways share; absent where they part at the start. */
  readonly after?: string;
  readonly ways: readonly {
    /** From where the ways part. */
    readonly moves: string;
    readonly href: string;
    readonly chapter: string;
  }[];
}

/** What the page of signs explains beside the words of the catalogue. */
export interface SignsLegend {
  /** Boards that show one sign each, by the names of their words. */
  readonly boards: readonly {
    readonly sign: 'turn' | 'lastMove' | 'mark' | 'plan' | 'threat' | 'guard';
    readonly board: string;
  }[];
  readonly glyphs: readonly { readonly html: string; readonly meaning: string }[];
  readonly states: readonly {
    readonly state: 'here' | 'right' | 'wrong' | 'due' | 'rest';
    readonly mark: string;
  }[];
}

/** The exercises of a chapter, as the page of all exercises shows them. */
export interface ChapterExercises {
  readonly chapter: string;
  readonly page: string;
  readonly entries: readonly {
    /** Such as `Exercise 3`. */
    readonly title: string;
    readonly href: string;
    /** `Position.key` */
    readonly key: string;
    readonly board: string;
    readonly ask: string;
  }[];
}

/** A pattern of the course, as the page of all patterns shows it. */
export interface PatternEntry {
  readonly html: string;
  /** The chapter that it stands in, and where. */
  readonly chapter: string;
  readonly href: string;
  /** `In 32 positions of the course`. */
  readonly count: string;
  readonly groups: readonly PatternGroup[];
}

/** Positions that have a pattern, those that follow one another in a line as one. */
export interface PatternGroup {
  /** `With colours reversed`. */
  readonly lead?: string;
  readonly shown: readonly Plate[];
  readonly folded: readonly Plate[];
  readonly more?: string;
}
