/**
 * A shelf: several courses in one site, each in a folder of its own, which is built as it would be alone. Two
 * agreements stand here: what the build of the courses gives to the shelf's own pages (`Shelf`, `BuiltCourse`), and
 * what those pages tell their scripts (`ShelfTable`). All of it is plain, serialisable data.
 */

/** What the shelf says of itself: `shelf.yaml` as it was read and checked. */
export interface Shelf {
  readonly title: string;
  /** BCP 47: of the shelf's own pages; each course has its own. */
  readonly language: string;
  readonly notation: 'letters' | 'english' | 'figurines';
  /** Who teaches. */
  readonly author?: string | undefined;
  readonly summary?: string | undefined;
  readonly licence?: string | undefined;
  /** Address of the whole site, with or without a final `/`; a feed and a sitemap need it. */
  readonly site?: string | undefined;
  /** Path of the whole site on its host; only the page for missing addresses needs it. */
  readonly base?: string | undefined;
  /** Whether readers keep the shelf's own pages for reading offline; so it is unless said. */
  readonly offline?: boolean | undefined;
}

/** A course of a shelf whose site stands built in its folder. */
export interface BuiltCourse {
  /** Names its folder, and nothing else: `tarrasch` for `tarrasch/index.html`. */
  readonly id: string;
  /** The course through all its editions, `CourseTable.course`: what a browser keeps of it is kept by this name. */
  readonly course: string;
  readonly title: string;
  readonly language: string;
  readonly side: 'white' | 'black' | 'both';
  readonly author?: string | undefined;
  readonly summary?: string | undefined;
  /** How many chapters, and how many minutes they take to read. */
  readonly chapters: number;
  readonly minutes: number;
  /** How many moves practice asks; without any the course has no page of practice. */
  readonly moves: number;
  /** The position that it is known by, drawn for a page. */
  readonly cover?:
    | {
        /** SVG of a board, as `drawBoardInPage` draws it, described in the course's language. */
        readonly board: string;
        /** Such as `after 7...Be7`; absent where no line of the course has the position. */
        readonly words?: string | undefined;
      }
    | undefined;
  /** The other languages that it is published in, each below its tag; absent where it has one. */
  readonly languages?: readonly CourseLanguage[] | undefined;
  /** How its cover looks, where the course has a look of its own: values of custom properties, by their names. */
  readonly cloth: {
    readonly light: Readonly<Record<string, string>>;
    readonly dark: Readonly<Record<string, string>>;
  };
  /** What its author tells of new editions, the latest first. */
  readonly news: readonly ShelfNews[];
  /** Every file of its site, relative to its folder, with `/`: its pages and its data are found among them. */
  readonly files: readonly string[];
}

export interface CourseLanguage {
  /** BCP 47, and the name of its folder in that of the course. */
  readonly tag: string;
  /** As its readers call it: `Deutsch`. */
  readonly name: string;
}

/** News of a course, as a feed has it. */
export interface ShelfNews {
  /** A `tag:` URI, the same as in the course's own feed; absent where the site has no address. */
  readonly id?: string | undefined;
  readonly title: string;
  /** `2026-11-25`. */
  readonly date: string;
  /** Relative to the course's folder. */
  readonly href: string;
  /** For a feed: all its addresses are whole; absent where the site has no address. */
  readonly html?: string | undefined;
}

/** What the shelf's pages tell their scripts. */
export interface ShelfTable {
  /** In the order of the shelf. */
  readonly courses: readonly ShelfCourse[];
}

export interface ShelfCourse {
  /** `CourseTable.course` */
  readonly course: string;
  readonly title: string;
  /** What stands before the first colon of the title. */
  readonly shortTitle: string;
  readonly language: string;
  readonly side: 'white' | 'black' | 'both';
  /** The address of its folder as seen from the root of the shelf, with a final `/`. */
  readonly at: string;
  /** Name of the script with its table, in its folder (`CourseTable`). */
  readonly table: string;
  /** Name of the script with what practice needs beside it (`CourseNotes`); absent where it asks nothing. */
  readonly notes?: string | undefined;
  /** How many chapters, which tells the folders of its word index. */
  readonly chapters: number;
  /** The same in other languages, each in a folder below the course's; absent where there are none. */
  readonly translations?: readonly Pick<ShelfCourse, 'language' | 'at' | 'table'>[] | undefined;
}

/** What a course in a shelf knows of it: the way back. */
export interface ShelfLink {
  readonly title: string;
  readonly language: string;
  /** Of the shelf's first page, relative to the course's folder: `../index.html`. */
  readonly href: string;
}
