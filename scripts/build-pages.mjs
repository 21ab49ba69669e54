/** Compiles the site's pages into dist/site/pages: what renders them, without Astro's own machinery. */
import { cp, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'astro';
import settings from '../astro.config.mjs';
import { bundledLicences } from './bundled-licences.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));

/** The files that the pages were made of. */
const bundled = new Set();
const noteFiles = {
  name: 'note-files',
  generateBundle(_, chunks) {
    for (const { moduleIds = [] } of Object.values(chunks)) {
      for (const id of moduleIds) bundled.add(id);
    }
  },
};

export async function buildPages() {
  const work = await mkdtemp(join(tmpdir(), 'linewright-pages-'));
  try {
    process.env.ASTRO_TELEMETRY_DISABLED = '1';
    // It would sign what our pages have not, with a new key in each build.
    process.env.ASTRO_KEY = Buffer.alloc(32).toString('base64');
    await build({
      ...settings,
      configFile: false,
      logLevel: 'error',
      root,
      outDir: join(work, 'out'),
      publicDir: join(work, 'public'),
      cacheDir: join(work, 'cache'),
      vite: { ...settings.vite, cacheDir: join(work, 'vite'), plugins: [noteFiles] },
    });
    const server = join(work, 'out', 'server');
    for (const name of await readdir(server, { recursive: true })) {
      if (!name.endsWith('.mjs')) continue;
      const file = join(server, name);
      const code = await readFile(file, 'utf8');
      // The package is the same wherever it was built.
      await writeFile(file, neutral(code, work));
    }
    await writeFile(join(server, 'licence.txt'), await bundledLicences(bundled));
    await cp(server, join(root, 'dist/site/pages'), { recursive: true });
  } finally {
    await rm(work, { recursive: true, force: true });
  }
}

/** Astro writes down where it was at work. */
function neutral(code, work) {
  return code
    .replaceAll(pathToFileURL(work).href, 'file:///work')
    .replaceAll(pathToFileURL(root).href, 'file:///linewright/')
    .replaceAll(work, '/work')
    .replaceAll(root, '/linewright/');
}
