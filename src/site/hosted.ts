import { createHash } from 'node:crypto';
import { writeWords } from '../contract/index.ts';
import type { Strings } from '../strings/index.ts';
import { embedCode } from './build/embed-script.ts';
import type { AssetPaths, SiteFile } from './site-data.ts';

/** What parts of a chapter say on the page of another site, for their scripts. */
export function hostedWords(strings: Strings): string {
  return writeWords('chapter', strings, {});
}

/** The script of `<course-line>`, with the words of a language. */
export async function lineScriptFile(assets: AssetPaths, strings: Strings): Promise<SiteFile> {
  const content = await embedCode(assets.scripts.line, strings);
  const hash = createHash('sha256').update(content).digest('hex').slice(0, 10);
  return { path: `line.${hash}.js`, content };
}
