import { cp, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { AssetPaths } from '../site-data.ts';
import { packageRoot } from './package-root.ts';

const folder = join(packageRoot, 'dist', 'assets');

/** What the package's own build made for browsers, by the paths that it has in a site. */
export async function readAssets(): Promise<AssetPaths> {
  const text = await readFile(join(folder, 'manifest.json'), 'utf8').catch((cause: unknown) => {
    throw new Error(`${folder} is missing: build the package with \`npm run build\``, { cause });
  });
  const { scripts, styles, fonts } = JSON.parse(text) as AssetPaths;
  const address = (file: string) => `assets/${file}`;
  const addresses = (files: Readonly<Record<string, string>>) =>
    Object.fromEntries(Object.entries(files).map(([name, file]) => [name, address(file)]));
  return { scripts: addresses(scripts), styles: addresses(styles), fonts: fonts.map(address) };
}

export async function copyAssets(out: string): Promise<void> {
  const manifest = join(folder, 'manifest.json');
  await cp(folder, join(out, 'assets'), {
    recursive: true,
    filter: (path) => path !== manifest,
  });
}
