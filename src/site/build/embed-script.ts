import { writeWords } from '../../contract/index.ts';
import { embedInks } from '../../draw/index.ts';
import { hostCss, type Look } from '../../look/index.ts';
import type { Strings } from '../../strings/index.ts';
import { embedScript } from '../render/embed/embed-elements.ts';
import type { AssetPaths, SiteFile } from '../site-data.ts';
import { readAsset } from './assets.ts';

/**
 * The script for other sites, under a fixed name and with words in the course's language; replaces the package's copy.
 */
export async function embedScriptFile(
  assets: AssetPaths,
  strings: Strings,
  look: Look | undefined,
): Promise<SiteFile> {
  const content = await embedCode(assets.scripts.embed, strings, look);
  return { path: embedScript, content };
}

/** The code of a script with such boards, in a function that gives it words and looks. @param script its path. */
export async function embedCode(
  script: string | undefined,
  strings: Strings,
  look?: Look,
): Promise<string> {
  const code = await readAsset(script ?? '');
  const words = writeWords('embed', strings);
  const rules = JSON.stringify(look ? hostCss(look, embedInks) : '');
  return `(function(courseBoardWords,courseBoardLook){${code}})(${words},${rules});\n`;
}
