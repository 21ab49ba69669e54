import { AstroError } from 'astro/errors';
import { sentence } from '../diagnostics/index.ts';

/** A place as Astro shows it: lines and columns from 1. */
export interface ErrorPlace {
  readonly file: string;
  readonly line?: number | undefined;
  readonly column?: number | undefined;
}

/**
 * What stops a site, for its author: Astro prints message, hint and place, and shows them over the page in `astro dev`.
 * Where it was thrown says nothing, so it has no stack.
 */
export function siteError(message: string, hint: string, place?: ErrorPlace): AstroError {
  const error = new AstroError(sentence(message), sentence(hint));
  error.name = 'Linewright';
  error.stack = `${error.name}: ${error.message}`;
  return place === undefined ? error : Object.assign(error, { loc: place });
}
