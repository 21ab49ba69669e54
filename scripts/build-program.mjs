/**
 * Bundles the program into a few files: to find and load seven hundred modules takes longer than to check a
 * small course. The modules of their own stay beside it, for whoever imports the package.
 */
import { readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { bundledLicences } from './bundled-licences.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const out = join(root, 'dist/cli');

/** Many small files of plain JavaScript. What is native, large or rarely used is loaded as it is. */
const bundled =
  /^(?:@ungap\/structured-clone|bail|ccount|character-entities[\w-]*|character-reference-invalid|commander|decode-named-character-reference|dequal|devlop|escape-string-regexp|extend|fastest-levenshtein|fault|format|hast-util-[\w-]+|hastscript|html-void-elements|is-[\w-]+|longest-streak|markdown-table|mdast-util-[\w-]+|micromark[\w-]*|parse-entities|property-information|remark-parse|space-separated-tokens|comma-separated-tokens|stringify-entities|trim-lines|trough|unified|unist-util-[\w-]+|vfile[\w-]*|web-namespaces|yaml|zod|zwitch)(?:\/|$)/;

/** Modules find files of the package beside themselves: each keeps the address that it has in dist/. */
const ownAddress = {
  name: 'own-address',
  setup({ onLoad, onResolve }) {
    onResolve({ filter: /^[^.#]/ }, ({ path, kind }) =>
      kind === 'entry-point' || bundled.test(path) ? undefined : { path, external: true },
    );
    onLoad({ filter: /\/dist\/.*\.js$/ }, async ({ path }) => {
      const code = await readFile(path, 'utf8');
      if (!code.includes('import.meta.url')) return { contents: code };
      const address = `new URL(${JSON.stringify(relative(out, path))}, import.meta.url).href`;
      return { contents: code.replaceAll('import.meta.url', address) };
    });
  },
};

export async function buildProgram() {
  const bundle = join(out, 'bundle');
  const { metafile } = await build({
    entryPoints: [join(out, 'run.js')],
    outdir: bundle,
    chunkNames: 'part-[hash]',
    bundle: true,
    splitting: true,
    format: 'esm',
    platform: 'node',
    target: 'node22.12',
    metafile: true,
    legalComments: 'none',
    // A package of the older kind asks for modules of Node by this name.
    banner: {
      js: "import { createRequire as makeRequire } from 'node:module'; const require = makeRequire(import.meta.url);",
    },
    plugins: [ownAddress],
  });
  // They lie beside main.js, so that the addresses above hold.
  for (const file of Object.keys(metafile.outputs)) {
    const path = resolve(file);
    await rename(path, join(out, relative(bundle, path)));
  }
  await rm(bundle, { recursive: true });
  const inputs = Object.keys(metafile.inputs).map((file) => resolve(file));
  await writeFile(join(out, 'licences.txt'), await bundledLicences(new Set(inputs)));
}
