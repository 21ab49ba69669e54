import path from 'node:path';
import { imageSize } from 'image-size';
import { readFitFile } from '../fit-file.ts';
import type { LetterText } from './choose-text.ts';

/** Kinds of pictures that every mail program shows (caniemail: image formats), by file ending. */
export const letterPictures: ReadonlyMap<string, string> = new Map([
  ['.gif', 'image/gif'],
  ['.jpeg', 'image/jpeg'],
  ['.jpg', 'image/jpeg'],
  ['.png', 'image/png'],
]);

export interface LetterPicture {
  /** Relative to the letter. */
  readonly path: string;
  readonly type: string;
  readonly bytes: Uint8Array;
  readonly width: number;
  readonly height: number;
}

/** The column of a letter leaves this many pixels for a picture. */
const widest = 552;

/** The author's pictures that a letter can show, by the paths that chapters name them with. */
export async function readMedia(
  { chapters }: Pick<LetterText, 'chapters'>,
  folder: string,
): Promise<ReadonlyMap<string, LetterPicture>> {
  const pictures = new Map<string, LetterPicture>();
  for (const file of new Set(chapters.flatMap(({ media }) => media))) {
    const ending = path.extname(file).toLowerCase();
    const type = letterPictures.get(ending);
    if (type === undefined) continue;
    const bytes = await readFitFile(folder, file);
    const { width, height } = sizeOf(bytes);
    const scale = Math.min(1, widest / width);
    pictures.set(file, {
      path: `images/picture-${pictures.size + 1}${ending}`,
      type,
      bytes,
      width: Math.round(width * scale),
      height: Math.round(height * scale),
    });
  }
  return pictures;
}

/** A photo may be stored on its side, with a note of how it is to be turned (Exif, orientation 5 to 8). */
function sizeOf(bytes: Uint8Array): { readonly width: number; readonly height: number } {
  const { width, height, orientation = 1 } = imageSize(bytes);
  return orientation >= 5 ? { width: height, height: width } : { width, height };
}
