/** What `linewright dev` and the pages that it serves tell one another. Nothing of this is in a published site. */

/** Everything of `dev` that is no file of the site stands in this folder of it. */
export const deskFolder = 'linewright-live/';

/** What the pages that are open are told after each reading of the course. */
export interface DeskState {
  /** Counts the readings. A page that was made of an earlier one asks for itself again. */
  readonly version: number;
  /** In the order of the text. */
  readonly findings: readonly DeskFinding[];
  /** Why the course cannot be read at all: the pages stay as they were. */
  readonly trouble?: string | undefined;
}

/** A finding as a page lists it. */
export interface DeskFinding {
  /** The same for as long as the finding is: its note in the text has this id. */
  readonly id: string;
  readonly severity: 'error' | 'warning';
  readonly rule: string;
  readonly message: string;
  readonly hint?: string | undefined;
  readonly file: string;
  readonly line: number;
  readonly column: number;
  /** The page whose text it stands in, such as `main-line.html`; absent where no page has it. */
  readonly page?: string | undefined;
}

/** What each script of the desk is given by its own element. */
export interface DeskScriptData {
  /** The path that the site is served at, `/` or such as `/courses/italian/`. */
  readonly root: string;
  /** `DeskState.version` of the page. */
  readonly version: string;
  /** What a page sends to show that this process served it. */
  readonly token: string;
  /** There, and empty, where an editor opens files. */
  readonly editor?: '' | undefined;
}

/** The header that the token is sent in. No page of another site can send one unasked. */
export const deskTokenHeader = 'x-linewright-token';
