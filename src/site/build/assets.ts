import { cp, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { packageRoot } from './package-root.ts';

/** What the package's own build made for browsers: names within the folder `assets`. */
interface Manifest {
  readonly script: string;
  readonly style: string;
  readonly fonts: readonly string[];
}

const folder = join(packageRoot, 'dist', 'assets');

/** The addresses of the script, the style sheet and the first fonts in the site. */
export async function readAssets(): Promise<Manifest> {
  const text = await readFile(join(folder, 'manifest.json'), 'utf8').catch((cause: unknown) => {
    throw new Error(`${folder} is missing: build the package with \`npm run build\``, { cause });
  });
  const { script, style, fonts } = JSON.parse(text) as Manifest;
  const address = (file: string) => `assets/${file}`;
  return { script: address(script), style: address(style), fonts: fonts.map(address) };
}

export async function copyAssets(out: string): Promise<void> {
  const manifest = join(folder, 'manifest.json');
  await cp(folder, join(out, 'assets'), {
    recursive: true,
    filter: (path) => path !== manifest,
  });
}
