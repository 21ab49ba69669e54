import { readPlainFile } from '../files/index.ts';
import { PublishError } from './publish-error.ts';

/** In bytes; a letter or a book with a larger picture reaches nobody (a judgement, no source). */
const limit = 50_000_000;

/**
 * A picture of the course, for a file that holds its pictures.
 * @throws FileRefusedError for what is no plain file of the course, PublishError for one too large.
 */
export async function readPicture(folder: string, file: string): Promise<Uint8Array> {
  const { bytes, size } = await readPlainFile(folder, file, limit);
  if (size <= limit) return bytes;
  const megabytes = Math.ceil(size / 1_000_000);
  throw new PublishError(
    `the picture ${file} has ${megabytes} MB, and ${limit / 1_000_000} MB are the most`,
    'save it smaller',
  );
}
