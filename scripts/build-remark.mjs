/**
 * Bundles the remark plugin into one file that runs anywhere: nothing of Node, nothing native, no package to find.
 */
import { writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { bundledLicences } from './bundled-licences.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = join(root, 'dist/remark');

/** Modules of Node that the plugin's own stages ask for, and what does the same elsewhere. */
const portable = {
  'node:crypto': join(folder, 'portable/crypto.js'),
  'node:module': join(folder, 'portable/module.js'),
  'node:path': 'pathe',
  'node:path/posix': 'pathe',
};

/** Our modules do nothing by being loaded, so what nobody asks of them stays out, and what they import with it. */
const onlyWhatIsUsed = {
  name: 'only-what-is-used',
  setup({ onResolve, resolve: find }) {
    onResolve({ filter: /./ }, async ({ path, kind, pluginData, ...from }) => {
      if (kind === 'entry-point' || pluginData === 'found') return undefined;
      const isStage = /\/dist\/(?:addresses|check|media|model|read|render)\//.test(from.importer);
      const named = (isStage && portable[path]) || path;
      const found = await find(named, { ...from, kind, pluginData: 'found' });
      const isOurs = found.path.startsWith(join(root, 'dist'));
      const isLeftOut =
        found.external || /\.node$|\/node_modules\/(?:@resvg|satori)\//.test(found.path);
      if (isLeftOut || found.errors.length > 0) return { path, external: true, sideEffects: false };
      const { sideEffects } = found;
      return { path: found.path, sideEffects: isOurs ? false : sideEffects };
    });
  },
};

export async function buildRemark() {
  const { metafile } = await build({
    entryPoints: [join(folder, 'index.js')],
    outfile: join(folder, 'bundle.js'),
    bundle: true,
    minify: true,
    format: 'esm',
    platform: 'neutral',
    mainFields: ['module', 'main'],
    target: 'es2024',
    metafile: true,
    legalComments: 'none',
    plugins: [onlyWhatIsUsed],
  });
  const [{ imports, inputs }] = Object.values(metafile.outputs);
  if (imports.length > 0) {
    const asked = Object.entries(metafile.inputs).flatMap(([file, { imports: own }]) =>
      own.flatMap(({ path, external }) => (external && file in inputs ? [`${file}: ${path}`] : [])),
    );
    throw new Error(`the remark plugin would need what browsers lack:\n${asked.join('\n')}`);
  }
  const files = Object.keys(inputs).map((file) => resolve(file));
  await writeFile(join(folder, 'licences.txt'), await bundledLicences(new Set(files)));
}
