import { mkdir, readdir, stat, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { printable, UserError } from '../../diagnostics/index.ts';
import { type DraftOptions, makeDraft, readArchive, writeNotes } from '../../import/index.ts';
import { makeNewFolder } from '../../output/index.ts';
import { command } from '../called-as.ts';
import { count, exitCodes, stderr, stdout } from '../console.ts';
import { loadCourse } from '../load-course.ts';
import { checkIntoOptions, importInto } from './import-into.ts';

export interface ImportOptions extends Pick<DraftOptions, 'by' | 'side'> {
  readonly out?: string;
  readonly without?: 'clocks';
  /** A course to lay the file against, instead of making one. */
  readonly into?: string;
  readonly write?: boolean;
  readonly pastEnds?: boolean;
  readonly format?: 'text' | 'json';
  readonly as?: 'lines' | 'games';
}

/** Notes shown in the terminal; the file has all. */
const toldNotes = 12;

/** Characters of the longest draft that is checked at once: the check takes many times that in memory. */
const mostChecked = 2_000_000;

/** `linewright import`: makes the draft of a course from a PGN file, in a new folder. */
export async function importPgn(file: string, options: ImportOptions): Promise<number> {
  const name = path.basename(file).replace(/\.pgn$/i, '');
  const folder = options.out ?? name;
  checkIntoOptions(options);
  await checkFile(file);
  if (options.into !== undefined) return importInto(file, options.into, options);
  await checkFolder(folder);
  const { by, side } = options;
  const draft = await makeDraft(readArchive(file), {
    by,
    side,
    title: printable(name),
    withoutClocks: options.without === 'clocks',
  });
  const [first] = draft.notes;
  if (draft.isEmpty) {
    const why = first && `: game ${first.game}, line ${first.line}: ${first.message}`;
    throw new UserError(
      `there is no game in ${file} that can be read${why ?? ''}`,
      'give a PGN file that has moves',
    );
  }
  const { notes, untold } = draft;
  await makeNewFolder(folder, async (work) => {
    await mkdir(path.join(work, 'chapters'));
    for (const each of draft.files) await writeFile(path.join(work, each.path), each.text);
    if (notes.length > 0) {
      const text = writeNotes(printable(path.basename(file)), notes, untold);
      await writeFile(path.join(work, 'import-notes.md'), text);
    }
  });
  for (const { game, line, message } of notes.slice(0, toldNotes)) {
    stderr.print`${file}:${line}: game ${game}: ${message}\n`;
  }
  const more = notes.length + untold - toldNotes;
  if (more > 0) stderr.print`… and ${more} more.\n`;
  stdout.print`${count(draft.games, 'game')}, ${count(draft.chapters, 'chapter')}: ${folder}\n`;
  if (notes.length > 0) {
    const told = count(notes.length + untold, 'note');
    stdout.print`${told} on what was not read, or not as it stands: ${path.join(folder, 'import-notes.md')}\n`;
  }
  const size = draft.files.reduce((sum, { text }) => sum + text.length, 0);
  if (size > mostChecked) {
    stdout.print`\`${command('check', folder)}\` tells what is left for you to settle.\n`;
  } else {
    const { diagnostics } = await loadCourse(folder);
    stdout.print`\`${command('check', folder)}\` has ${count(diagnostics.length, 'finding')} for you to settle.\n`;
  }
  return exitCodes.clean;
}

async function checkFile(file: string): Promise<void> {
  const found = await stat(file).catch(() => undefined);
  if (found === undefined) throw new UserError(`there is no file ${file}`, 'name a PGN file');
  if (found.isDirectory())
    throw new UserError(`the name ${file} is a folder's`, 'name a PGN file in it');
}

async function checkFolder(folder: string): Promise<void> {
  const entries = await readdir(folder).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return [];
    if (error.code === 'ENOTDIR') return ['a file'];
    throw error;
  });
  if (entries.length > 0) {
    throw new UserError(
      `the folder ${folder} is there already, and not empty`,
      'a draft needs a folder of its own: give `--out DIR`',
    );
  }
}
