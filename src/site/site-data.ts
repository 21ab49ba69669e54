import { readFileSync } from 'node:fs';

/**
 * What the pages show: plain data, since Astro runs in a process of its own and gets it as a
 * JSON file. The pages read nothing else; everything in it has been rendered or checked before.
 */
export interface SiteData {
  readonly language: string;
  readonly title: string;
  readonly side: 'white' | 'black' | 'both';
  readonly notation: 'letters' | 'figurines';
  readonly author?: string;
  readonly summary?: string;
  readonly licence?: string;
  /** Address that the site will have, without a final `/`. */
  readonly site?: string;
  /** Path that the site will have on its host; only the page for missing addresses needs it. */
  readonly base?: string;
  /** Whether the site has a worker that keeps it for reading offline. */
  readonly offline: boolean;
  readonly assets: AssetPaths;
  /** Path of the script with the table of all positions (`contract/course-table.ts`). */
  readonly table: string;
  /**
   * Path of the script with what practice needs beside it (`contract/course-notes.ts`); absent where
   * the course advises no moves.
   */
  readonly notes?: string;
  /** Path of the picture for links to the course. */
  readonly card: string;
  /** Paths of the icons of a browser's tab and of a phone's start page. */
  readonly icons: { readonly tab: string; readonly touch: string };
  /** Colours of the paper, for what a browser draws around a page. */
  readonly sheet: { readonly light: string; readonly dark: string };
  /** The symbols of all boards. */
  readonly sprite: string;
  readonly chapters: readonly ChapterPage[];
  readonly handout: Handout;
  readonly positions: readonly NamedPositions[];
  readonly transpositions: readonly Transposition[];
  readonly patterns: readonly PatternEntry[];
  readonly downloads: readonly Download[];
  /** Boards for other sites. */
  readonly embeds: readonly EmbedChapter[];
  /** The line that loads their script. */
  readonly embedScript: string;
  readonly news: readonly NewsEntry[];
  /** Path of the feed of news, where there is one. */
  readonly feed?: string;
}

/** A file of the site that is not read in a browser. */
export interface Download {
  readonly kind: 'book' | 'moves';
  /** Relative to the site, with `/`. */
  readonly path: string;
}

/** Paths in the site of what the package's own build made for browsers. */
export interface AssetPaths {
  /** By the names in `scripts/build-browser.mjs`. */
  readonly scripts: Readonly<Record<string, string>>;
  readonly styles: Readonly<Record<string, string>>;
  /** Of the first lines of every page. */
  readonly fonts: readonly string[];
}

/** A file of the site that is no page: made while the pages are rendered. */
export interface SiteFile {
  /** Relative to the site, with `/`. */
  readonly path: string;
  readonly content: string | Uint8Array;
}

export interface ChapterPage {
  readonly id: string;
  readonly number: number;
  readonly title: string;
  readonly summary?: string;
  /** The text below the title. */
  readonly html: string;
  /** The reading board as it stands before the first move; absent where there is none to follow. */
  readonly board?: string;
  /** Titles of the chapters that its board leads to, by the addresses of their pages. */
  readonly met: Readonly<Record<string, string>>;
  /** A small board for the contents page. */
  readonly emblem?: string;
  /** Path of the picture for links to this page. */
  readonly card: string;
}

export interface EmbedChapter {
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
  /** The date in words. */
  readonly day: string;
  readonly html: string;
}

/** The whole course on one page, for paper. */
export interface Handout {
  readonly chapters: readonly {
    readonly number: number;
    readonly title: string;
    readonly summary?: string;
    readonly html: string;
    /** The answers of its exercises, which stand at the end of the handout. */
    readonly answers?: string;
  }[];
}

export interface NamedPositions {
  readonly chapter: string;
  readonly page: string;
  readonly entries: readonly {
    readonly name: string;
    readonly href: string;
    /** Such as `after 7...Be7`. */
    readonly words: string;
  }[];
}

/** A position in which different orders of moves meet. */
export interface Transposition {
  /** The last move of the first way, `9.b3`. */
  readonly move: string;
  /** The author's names for it. */
  readonly names?: readonly string[];
  readonly href: string;
  /** The last move that all ways share; absent where they part at the start. */
  readonly after?: string;
  readonly ways: readonly {
    /** From where the ways part. */
    readonly moves: string;
    readonly href: string;
    readonly chapter: string;
  }[];
}

/** A pattern of the course, as the page of all patterns shows it. */
export interface PatternEntry {
  readonly html: string;
  /** The chapter that it stands in, and where. */
  readonly chapter: string;
  readonly href: string;
}

/** Name of the environment variable that tells the pages where their data are. */
export const siteDataVariable = 'LINEWRIGHT_SITE_DATA';

let data: SiteData | undefined;

/** The data of the site that is being built; for pages only. */
export function siteData(): SiteData {
  const file = process.env[siteDataVariable];
  if (file === undefined) throw new Error(`${siteDataVariable} is not set: build with buildSite()`);
  data ??= JSON.parse(readFileSync(file, 'utf8')) as SiteData;
  return data;
}
