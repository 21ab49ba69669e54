import type { Chapter } from '../../model/index.ts';
import type { PartMaker } from '../../render/index.ts';
import type { DocumentPage, PageData, PageName, SiteFile, SiteFrame } from '../site-data.ts';
import type { Embed } from './embed/embeds.ts';

/** A page of a course, and how it comes to what it shows. */
export interface SitePage<Name extends PageName = PageName> {
  /** Relative to the site, with `/`. */
  readonly path: string;
  readonly name: Name;
  /** Renders what the page shows. */
  readonly data: () => PageData[Name];
  /** A print of all that it is made of; absent where nothing is remembered. */
  readonly print?: (() => string) | undefined;
}

/** Files that are made together, when one of them is asked for. */
export interface FileGroup {
  /** What the paths of all of them, and of no file of another group, begin with. */
  readonly beginning: string;
  readonly make: () => readonly SiteFile[];
  /** As that of a page. */
  readonly print?: (() => string) | undefined;
}

/** What an earlier build of a course has left. */
export interface SiteMemory {
  /** A print of all that the course shows beside the words of its chapters (`pipeline/build/keep-parts.ts`). */
  readonly face: string;
  /** A short text that is equal where a chapter's part is. */
  readonly print: (maker: PartMaker<unknown>, chapter: Chapter) => string;
  /** What `make` gives for a course of this face: as it was made before, else made now. Plain data. */
  readonly recall: <Value>(name: string, make: () => Value) => Value;
}

/** What a site is made of. Nothing of it is rendered before it is asked for. */
export interface RenderedSite {
  readonly frame: SiteFrame;
  readonly pages: readonly SitePage[];
  /** The positions that other sites may show, whose pictures are still to be drawn. */
  readonly embeds: () => readonly Embed[];
  readonly files: readonly FileGroup[];
  /** Chapters, then pages of the author's, as they are shown, for whoever indexes their words. */
  readonly documentPages: readonly {
    readonly id: string;
    readonly page: () => DocumentPage;
    readonly print?: (() => string) | undefined;
  }[];
  /** A print of all that the site shows beside the words of its chapters; absent where nothing is remembered. */
  readonly print?: string | undefined;
}

export function page<Name extends PageName>(
  name: Name,
  path: string,
  data: () => PageData[Name],
  print?: () => string,
): SitePage<Name> {
  return { path, name, data, ...(print && { print }) };
}
