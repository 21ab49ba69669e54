import type { Chapter } from '../../model/index.ts';
import type { PartMaker } from '../../render/index.ts';
import type { DocumentPage, PageData, PageName, SiteFile, SiteFrame } from '../site-data.ts';
import type { Embed } from './embed/embeds.ts';

/** A page of a course, and how to render it. */
export interface SitePage<Name extends PageName = PageName> {
  /** Relative to the site, with `/`. */
  readonly path: string;
  readonly name: Name;
  /** Renders what the page shows. */
  readonly data: () => PageData[Name];
  /** A print of all that it is made of; absent without a memory. */
  readonly print?: (() => string) | undefined;
}

/** Files made together, when one is asked for. */
export interface FileGroup {
  /** Prefix of their paths, and of no others. */
  readonly beginning: string;
  readonly make: () => readonly SiteFile[];
  readonly print?: (() => string) | undefined;
}

/** What an earlier build of a course has left. */
export interface SiteMemory {
  /** A print of all that the course shows beside the words of its chapters (`pipeline/build/keep-parts.ts`). */
  readonly face: string;
  /** A print of a chapter's part. */
  readonly print: (maker: PartMaker<unknown>, chapter: Chapter) => string;
  /** The result of `make` for a course of this face, recalled or made now. Plain data. */
  readonly recall: <Value>(name: string, make: () => Value) => Value;
}

/** What a site is made of, rendered when asked for. */
export interface RenderedSite {
  readonly frame: SiteFrame;
  readonly pages: readonly SitePage[];
  /** The positions that other sites may show, whose pictures are still to be drawn. */
  readonly embeds: () => readonly Embed[];
  readonly files: readonly FileGroup[];
  /** Chapters, then the author's pages, as shown, for the index of words. */
  readonly documentPages: readonly {
    readonly id: string;
    readonly page: () => DocumentPage;
    readonly print?: (() => string) | undefined;
  }[];
  /** A print of all that the site shows beside its chapters' words; absent without a memory. */
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
