/** The licences of packages whose code was bundled: they ask to go with it. */
import { readdir, readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';

/** @param inputs the files of a bundle, of which those of packages are picked. */
export async function bundledLicences(inputs) {
  const packages = new Map();
  for (const input of inputs) {
    const [folder, name] = /^.*node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(input) ?? [];
    if (folder !== undefined) packages.set(name, resolve(folder));
  }
  const texts = [...packages.keys()].sort().map(async (name) => {
    const folder = packages.get(name);
    const about = JSON.parse(await readFile(join(folder, 'package.json'), 'utf8'));
    // An older form is a list.
    const { version, license = about.licenses?.map(({ type }) => type).join(' or ') } = about;
    const file = (await readdir(folder)).find((entry) => /^licen[cs]e/i.test(entry));
    if (file === undefined && license === undefined) throw new Error(`${name} has no licence`);
    // Some packages come without the text of the licence that they name.
    const text = file === undefined ? '' : `\n${await readFile(join(folder, file), 'utf8')}`;
    return `${name} ${version} (${license})\n${text}`;
  });
  return (await Promise.all(texts)).join(`\n${'-'.repeat(72)}\n\n`);
}
