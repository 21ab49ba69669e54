import path from 'node:path';
import { type Course, documentsInBook } from '../../model/index.ts';
import { readFitFile } from '../fit-file.ts';

/** Kinds of pictures that every reading system shows (EPUB 3.3, section 3.2), by file ending. */
export const bookPictures: ReadonlyMap<string, string> = new Map([
  ['.gif', 'image/gif'],
  ['.jpeg', 'image/jpeg'],
  ['.jpg', 'image/jpeg'],
  ['.png', 'image/png'],
  ['.svg', 'image/svg+xml'],
  ['.webp', 'image/webp'],
]);

export interface BookPicture {
  /** Relative to the package document. */
  readonly path: string;
  readonly type: string;
  readonly bytes: Uint8Array;
}

/** Where a book has the author's pictures that it can have, by the paths that chapters name them with. */
export function picturePaths(
  course: Course,
): ReadonlyMap<string, Pick<BookPicture, 'path' | 'type'>> {
  const pictures = new Map<string, Pick<BookPicture, 'path' | 'type'>>();
  for (const file of new Set(documentsInBook(course).flatMap(({ media }) => media))) {
    const ending = path.extname(file).toLowerCase();
    const type = bookPictures.get(ending);
    if (type === undefined) continue;
    pictures.set(file, { path: `media/picture-${pictures.size + 1}${ending}`, type });
  }
  return pictures;
}

/** The same with what stands in their files. */
export async function readPictures(course: Course, folder: string): Promise<BookPicture[]> {
  const pictures: BookPicture[] = [];
  for (const [file, picture] of picturePaths(course)) {
    pictures.push({ ...picture, bytes: await readFitFile(folder, file) });
  }
  return pictures;
}
