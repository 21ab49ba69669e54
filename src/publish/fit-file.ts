import { readPlainFile } from '../files/index.ts';
import { findMediaFault } from '../media/index.ts';
import { PublishError } from './publish-error.ts';

/** In bytes; a letter or a book with a larger picture reaches nobody (a judgement, no source). */
const limit = 50_000_000;

/**
 * Reads a file of `media/` for a file that holds its pictures. A course may have been read without a
 * look into it, and it may have changed since.
 * @throws FileRefusedError for what is no plain file of the course, PublishError for what is not to be
 * published and for what is too large.
 */
export async function readFitFile(folder: string, file: string): Promise<Uint8Array> {
  const fault = await findMediaFault(folder, file);
  if (fault) throw new PublishError(fault.message, fault.hint);
  const { bytes, size } = await readPlainFile(folder, file, limit);
  if (size <= limit) return bytes;
  const megabytes = Math.ceil(size / 1_000_000);
  throw new PublishError(
    `the picture ${file} has ${megabytes} MB, and ${limit / 1_000_000} MB are the most`,
    'save it smaller',
  );
}
