import type { Course, NodeRef } from '../model/index.ts';
import { type Ask, askOf } from './ask/ask.ts';

/** Where everything of the course stands in the site. All addresses are relative. */
export interface Addresses {
  /** File name of a chapter's page. */
  page(chapter: string): string;
  /** Id of a move, or of its block for the start position, within its page. */
  id(ref: NodeRef): string;
  /** Address of a move as seen from the page of chapter `from`, or from outside all chapters. */
  href(ref: NodeRef, from?: string): string;
}

/** The addresses of a course's pages; `ending` is that of the chapters' files. */
export function assignAddresses(source: Course | Ask, ending = 'html'): Addresses {
  const ask = typeof source === 'function' ? source : askOf(source);
  const page = (chapter: string): string => `${ask('chapter', chapter)?.id ?? 'index'}.${ending}`;
  const id = (ref: NodeRef): string => ask('id', ref);
  const href = (ref: NodeRef, from?: string): string =>
    `${ref.chapter === from ? '' : page(ref.chapter)}#${encodeURIComponent(id(ref))}`;
  return { page, id, href };
}
