import path from 'node:path/posix';
import { decodeAddress } from './file-address.ts';

/** The file that an address names: relative to the chapter, else to the course folder. */
export function candidatePaths(
  address: string,
  chapter: string,
): { file: string; paths: string[] } {
  const file = decodeAddress(address.replaceAll('\\', '/'));
  return { file, paths: [path.join(path.dirname(chapter), file), path.normalize(file)] };
}
