import type { Strings } from '../../strings/index.ts';
import { boardWords } from '../board-words.ts';
import { embedScript } from '../render/embed-pages.ts';
import type { AssetPaths, SiteFile } from '../site-data.ts';
import { readAsset } from './assets.ts';

/**
 * The script that other sites include, under a name that stays, with the words of the course's
 * language. The package's own copy of it is not published beside it.
 */
export async function embedScriptFile(assets: AssetPaths, strings: Strings): Promise<SiteFile> {
  const code = await readAsset(assets.scripts.embed ?? '');
  const words = boardWords(strings, { toMove: strings.toMove, open: strings.embed.open });
  return { path: embedScript, content: `(function(courseBoardWords){${code}})(${words});\n` };
}
