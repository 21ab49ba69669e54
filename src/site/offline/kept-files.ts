import { createHash } from 'node:crypto';
import { readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { fileAddress } from '../../model/index.ts';

/** Bytes of the largest file kept: no film is fetched for a reader who came for a page. */
const largest = 8_000_000;

/** Boards for other sites that are kept; of more, none: each is a request. */
const mostBoards = 300;

/** What browsers fetch unasked, for reading offline. */
export interface KeptFiles {
  /** SHA-256 in base64 by the address within the site. */
  readonly hashes: Readonly<Record<string, string>>;
  readonly bytes: number;
  /** Files too large to be kept. */
  readonly left: readonly string[];
}

export interface KnownFile {
  readonly size: number;
  /** SHA-256 in base64. */
  readonly hash: string;
}

/** Files for other sites and machines, and pictures in double size. */
const forOthers = new RegExp(
  `^(?:${[
    'assets/embed\\..*',
    'images/(?:cards|positions)/.*',
    'images/course\\.png',
    '.*@2x\\.png',
    'boards/.*\\.json',
    'feed\\.xml',
    'linewright\\.json',
    'robots\\.txt',
    'sitemap\\.xml',
    '.*licence\\.txt',
  ].join('|')})$`,
);

/**
 * What a reader offline needs of a site's files, given relative to its folder.
 * @param known what is known of files; the others are read.
 */
export async function keptFiles(
  folder: string,
  files: readonly string[],
  known: ReadonlyMap<string, KnownFile> = new Map(),
): Promise<KeptFiles> {
  const hashes: Record<string, string> = {};
  const left: string[] = [];
  let bytes = 0;
  const boards = files.filter((file) => file.startsWith('boards/') && !forOthers.test(file));
  for (const file of files) {
    if (forOthers.test(file)) continue;
    if (file.startsWith('boards/') && boards.length > mostBoards) continue;
    const written = known.get(file);
    const size = written?.size ?? (await stat(join(folder, file))).size;
    if (size > largest) {
      left.push(file);
      continue;
    }
    // As pages name it: the browser looks an address up as it is written.
    hashes[fileAddress(file)] = written?.hash ?? (await hashOf(join(folder, file)));
    bytes += size;
  }
  return { hashes, bytes, left };
}

async function hashOf(file: string): Promise<string> {
  return createHash('sha256')
    .update(await readFile(file))
    .digest('base64');
}
