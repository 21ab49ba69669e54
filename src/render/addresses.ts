import type { Course, NodeRef } from '../model/index.ts';
import { type Ask, askOf } from './ask/ask.ts';

/** The addresses of everything in the site, all relative. */
export interface Addresses {
  /** File name of a chapter's page. */
  page(chapter: string): string;
  /** The id of a move within its page; for a start position, of its block. */
  id(ref: NodeRef): string;
  /** The address of a move, relative to the page of chapter `from`, or to the site's root. */
  href(ref: NodeRef, from?: string): string;
}

/**
 * The addresses of a course's pages.
 * @param ending of the files of chapters.
 */
export function assignAddresses(source: Course | Ask, ending = 'html'): Addresses {
  const ask = typeof source === 'function' ? source : askOf(source);
  const page = (chapter: string): string => `${ask('chapter', chapter)?.id ?? 'index'}.${ending}`;
  const id = (ref: NodeRef): string => ask('id', ref);
  const href = (ref: NodeRef, from?: string): string =>
    `${ref.chapter === from ? '' : page(ref.chapter)}#${encodeURIComponent(id(ref))}`;
  return { page, id, href };
}
