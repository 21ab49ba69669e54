import type { Place } from '../diagnostics/place.ts';

/** Why a course that passed the check cannot become a site. The previous output stays. */
export class SiteError extends Error {
  readonly hint: string;
  readonly place: Place | undefined;

  constructor(message: string, hint: string, place?: Place) {
    super(message);
    this.name = 'SiteError';
    this.hint = hint;
    this.place = place;
  }
}
