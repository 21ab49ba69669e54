import { cp, readFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import type { AssetPaths } from '../site-data.ts';
import { packageRoot } from './package-root.ts';

/** The folder of the package whose files are those of `assets/` in a site. */
export const assetsFolder = join(packageRoot, 'dist', 'assets');

/** Files for browsers, made by the package's build, by their paths in a site. */
export async function readAssets(): Promise<AssetPaths> {
  const text = await readFile(join(assetsFolder, 'manifest.json'), 'utf8').catch(
    (cause: unknown) => {
      throw new Error(`${assetsFolder} is missing: build the package with \`npm run build\``, {
        cause,
      });
    },
  );
  const { scripts, styles, fonts } = JSON.parse(text) as AssetPaths;
  const address = (file: string) => `assets/${file}`;
  const addresses = (files: Readonly<Record<string, string>>) =>
    Object.fromEntries(Object.entries(files).map(([name, file]) => [name, address(file)]));
  return { scripts: addresses(scripts), styles: addresses(styles), fonts: fonts.map(address) };
}

/** The text of one of them. @param path in a site. */
export function readAsset(path: string): Promise<string> {
  return readFile(join(assetsFolder, basename(path)), 'utf8');
}

/** Copies them into a site, except the script that has another name there. */
export async function copyAssets(out: string, { scripts }: AssetPaths): Promise<void> {
  const own = ['manifest.json', basename(scripts.embed ?? '')];
  await cp(assetsFolder, join(out, 'assets'), {
    recursive: true,
    // Those who upload by time need not send them again.
    preserveTimestamps: true,
    filter: (path) => !own.includes(basename(path)),
  });
}
