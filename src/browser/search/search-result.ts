/** An answer to a search: a sentence that is spoken too, and what was found. */
export interface SearchResult {
  readonly status: readonly (Node | string)[];
  readonly found: readonly Node[];
}

/** Puts an answer in the place that the page has for it. */
export function showResult(section: Element, { status, found }: SearchResult): void {
  section.querySelector('.status')?.replaceChildren(...status);
  section.querySelector('.found')?.replaceChildren(...found);
}
