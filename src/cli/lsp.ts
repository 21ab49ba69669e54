import path from 'node:path';
import { serveLanguage } from '../lsp/index.ts';
import { cacheFolder, filesIn, withKeptResults } from '../pipeline/index.ts';
import { createWorkspace, loadKept, openSyntax } from '../workspace/index.ts';
import { exitCodes, standardStreams } from './console.ts';
import { handbookAddress } from './handbook-address.ts';
import { packageVersion } from './package-version.ts';

/** `linewright lsp`: serves an editor by the Language Server Protocol, over the standard streams. */
export async function lsp(): Promise<number> {
  const code = await serveLanguage({
    ...standardStreams(),
    host: {
      version: packageVersion(),
      handbook: handbookAddress(),
      readFiles: async (folder) => withKeptResults(await filesIn(folder), cacheFolder(), folder),
      async openWorkspace(folder) {
        const cache = cacheFolder();
        const as = path.resolve(folder);
        return createWorkspace({
          kept: await loadKept(cache, as),
          syntaxes: await openSyntax(cache, as),
        });
      },
    },
  });
  return code === 0 ? exitCodes.clean : exitCodes.findings;
}
