import type { RelatedPlace } from '../diagnostics/index.ts';

/** Why a file of `media/` is not published. */
export interface MediaFault {
  readonly message: string;
  readonly hint: string;
  /** The parts of the file that are to blame, for files of text. */
  readonly related?: readonly RelatedPlace[];
}
