import { writeWords } from '../../contract/index.ts';
import { embedInks } from '../../draw/index.ts';
import { hostCss, type Look } from '../../look/index.ts';
import type { Strings } from '../../strings/index.ts';
import { embedWords } from '../page-words.ts';
import { embedScript } from '../render/embed/embed-elements.ts';
import type { AssetPaths, SiteFile } from '../site-data.ts';
import { readAsset } from './assets.ts';

/**
 * The script that other sites include, under a name that stays, with the words of the course's
 * language. The package's own copy of it is not published beside it.
 */
export async function embedScriptFile(
  assets: AssetPaths,
  strings: Strings,
  look: Look | undefined,
): Promise<SiteFile> {
  const content = await embedCode(assets.scripts.embed, strings, look);
  return { path: embedScript, content };
}

/** The code of a script with such boards, which gets words and look from around it. @param script its path. */
export async function embedCode(
  script: string | undefined,
  strings: Strings,
  look?: Look,
): Promise<string> {
  const code = await readAsset(script ?? '');
  const words = writeWords('embed', embedWords(strings));
  const rules = JSON.stringify(look ? hostCss(look, embedInks) : '');
  return `(function(courseBoardWords,courseBoardLook){${code}})(${words},${rules});\n`;
}
