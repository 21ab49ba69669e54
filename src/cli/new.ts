import { cp, readdir, readFile, rename, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { UserError } from '../diagnostics/index.ts';
import { slug } from '../model/index.ts';
import { makeNewFolder } from '../output/index.ts';
import { idLine } from '../read/index.ts';
import { command } from './called-as.ts';
import { exitCodes, stdout } from './console.ts';
import { type LookName, lookFolder } from './looks.ts';

const starter = fileURLToPath(new URL('../../content/starter', import.meta.url));

/**
 * `linewright new`: makes a small course that builds.
 * @param options `look`: one of the finished looks.
 */
export async function makeNew(
  folder: string,
  { look }: { readonly look?: LookName | undefined } = {},
): Promise<number> {
  const entries = await readdir(folder).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return [];
    if (error.code === 'ENOTDIR') {
      throw new UserError(`${folder} is a file`, 'name a folder that does not exist yet');
    }
    throw error;
  });
  if (entries.length > 0) {
    throw new UserError(
      `the folder ${folder} is not empty`,
      'a new course needs a folder of its own',
    );
  }
  await makeNewFolder(folder, async (work) => {
    await cp(starter, work, { recursive: true });
    if (look !== undefined) await cp(lookFolder(look), work, { recursive: true });
    // npm packs no file named .gitignore.
    await rename(path.join(work, 'gitignore'), path.join(work, '.gitignore'));
    await giveId(work, folder);
  });
  stdout.print`A new course stands in ${folder}.\n\n`;
  const commands = [
    ['dev', 'shows it while you write'],
    ['check', 'tells what is wrong'],
    ['build', 'publishes it'],
  ] as const;
  const lines = commands.map(([name, does]) => [command(name, folder), does] as const);
  const width = Math.max(...lines.map(([line]) => line.length));
  for (const [line, does] of lines) stdout.print`  ${line.padEnd(width)}   ${does}\n`;
  return exitCodes.clean;
}

/** Gives the course an id of its own: with the starter's, all courses of a host would share progress. */
async function giveId(work: string, folder: string): Promise<void> {
  const file = path.join(work, 'course.yaml');
  const settings = await readFile(file, 'utf8');
  const id = slug(path.basename(path.resolve(folder)));
  await writeFile(file, settings.replace(/^id: .*$/m, idLine(id)));
}
