import { readdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import sirv from 'sirv';
import { serve } from '../../src/cli/serve.ts';

const text = /\.(?:css|html|js|svg|webmanifest)$/;

/** Serves a site as hosts do, its text compressed: the packed files are laid beside the others. */
export async function serveCompressed(
  folder: string,
): Promise<{ address: string; close: () => void }> {
  for (const name of await readdir(folder, { recursive: true })) {
    if (!text.test(name)) continue;
    const file = path.join(folder, name);
    await writeFile(`${file}.gz`, gzipSync(await readFile(file), { level: 9 }));
  }
  const { server, address } = await serve(sirv(folder, { gzip: true }), 4280);
  return {
    address,
    close: () => {
      server.closeAllConnections();
      server.close();
    },
  };
}
