import type { RelatedPlace } from '../diagnostics/index.ts';

/** Why a file of `media/` is not published. */
export interface MediaFault {
  readonly message: string;
  readonly hint: string;
  /** The parts of the file that are to blame, for files of text. */
  readonly related?: readonly RelatedPlace[];
}

/** What a picture looks like from outside. */
export interface PictureShape {
  /** Pixels; of an SVG what its size or its `viewBox` says. Absent where nothing does. */
  readonly size?: { readonly width: number; readonly height: number };
  readonly bytes: number;
  /** Whether it is an SVG with text, which is set in whatever face there is. */
  readonly hasText: boolean;
}
