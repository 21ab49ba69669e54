import { mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { writeWords } from '../../contract/words.ts';
import type { Strings } from '../../strings/index.ts';
import { embedWords } from '../page-words.ts';
import { embedScript } from '../render/embed-pages.ts';
import type { AssetPaths } from '../site-data.ts';

/**
 * Writes the script that other sites include, under a name that stays, with the words of the
 * course's language. The package's own copy of it is not published beside it.
 */
export async function writeEmbedScript(
  out: string,
  assets: AssetPaths,
  strings: Strings,
): Promise<void> {
  const own = join(out, assets.scripts.embed ?? '');
  const code = await readFile(own, 'utf8');
  await rm(own);
  const words = writeWords('embed', embedWords(strings));
  const file = join(out, embedScript);
  await mkdir(dirname(file), { recursive: true });
  await writeFile(file, `(function(courseBoardWords){${code}})(${words});\n`);
}
