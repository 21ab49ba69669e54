import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../', import.meta.url));

let known: Promise<string> | undefined;

/**
 * A hash of this program's own code: what another edition of it has kept is not taken for right. The package's
 * build writes it down; run from source, it is made of the source.
 */
export function codeHash(): Promise<string> {
  known ??= readFile(`${root}code-hash.txt`, 'utf8').catch(() => hashFolder(root));
  return known;
}

export async function hashFolder(folder: string): Promise<string> {
  const names = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = names
    .filter((entry) => entry.isFile() && !entry.name.includes('.test.'))
    .map(({ parentPath, name }) => `${parentPath}/${name}`)
    .sort();
  const hash = createHash('sha256');
  for (const file of files)
    hash.update(`${file.slice(folder.length)}\n`).update(await readFile(file));
  return hash.digest('base64url').slice(0, 22);
}
