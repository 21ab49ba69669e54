import type { CourseLanguage, ShelfTable } from '../../contract/index.ts';

/** What each page of a shelf is given beside the frame, by the name of its file in `pages/`. */
export interface ShelfPageData {
  readonly shelf: {
    readonly books: readonly ShelfBook[];
    readonly news: readonly ShelfEntry[];
    /** Paths of style sheets of this shelf alone. */
    readonly sheets: readonly string[];
  };
  readonly 'shelf-practice': ForScripts;
  readonly 'shelf-search': ForScripts;
  readonly 'shelf-compare': ForScripts;
}

interface ForScripts {
  readonly books: readonly ShelfBook[];
  readonly table: ShelfTable;
}

/** A course as it stands on the shelf. */
export interface ShelfBook {
  /** The address of its folder, with a final `/`. */
  readonly at: string;
  /** `CourseTable.course` */
  readonly course: string;
  readonly title: string;
  readonly shortTitle: string;
  readonly subtitle?: string;
  readonly language: string;
  readonly side: 'white' | 'black' | 'both';
  readonly author?: string;
  readonly summary?: string;
  readonly chapters: number;
  readonly minutes: number;
  /** Positions that practice asks. */
  readonly moves: number;
  /** The position that it is known by, drawn. */
  readonly board?: string;
  /** The other languages that it can be read in. */
  readonly languages: readonly CourseLanguage[];
  /** The class that gives it its cloth. */
  readonly cloth: string;
  /** The pages that it has, by the names that a shelf has for its own. */
  readonly pages: readonly string[];
}

export interface ShelfEntry {
  readonly title: string;
  /** `2026-11-25`. */
  readonly date: string;
  readonly day: string;
  readonly href: string;
  /** Its course, and the language of both titles. */
  readonly course: string;
  readonly language: string;
}
