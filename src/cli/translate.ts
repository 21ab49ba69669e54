import path from 'node:path';
import { UserError } from '../diagnostics/index.ts';
import { readPlainFile, replaceFile, replacePlainFile } from '../files/index.ts';
import { findFiles, isLanguageTag } from '../read/index.ts';
import { languageName, type PlannedFile, planTranslation } from '../translation/index.ts';
import { count, exitCodes, stdout } from './console.ts';
import { openToCheck } from './load-course.ts';

export interface TranslateOptions {
  /** Writes the files instead of listing them. */
  readonly write: boolean;
}

/** Bytes of the largest chapter that is read. */
const largest = 1_000_000;

/**
 * `linewright translate`: makes the files of a translation, moves in place and words to fill in, and updates them when
 * the original has changed. Never replaces a translator's words.
 */
export async function translate(
  tag: string,
  folder: string,
  { write }: TranslateOptions,
): Promise<number> {
  if (!isLanguageTag(tag)) {
    throw new UserError(
      `\`${tag}\` is no language tag`,
      'name a language, such as `de` or `pt-BR`',
    );
  }
  const { current } = await openToCheck(folder);
  const { language } = current.course().settings;
  if (tag.toLowerCase() === language.toLowerCase()) {
    throw new UserError(
      `the course itself is in ${languageName(language)}`,
      'name another language, or set `language` in course.yaml to that of its chapters',
    );
  }
  const { files, origin } = planTranslation(await findFiles(folder), tag);
  const changed = files.filter(({ text, before }) => text !== before);
  if (write) {
    for (const file of changed) await put(folder, file);
    if (origin) await put(folder, origin);
  }
  for (const file of files) tell(file, write);
  const open = files.reduce((sum, { open }) => sum + open.words, 0);
  const texts = files.reduce((sum, { open }) => sum + open.texts, 0);
  if (open > 0) {
    stdout.print`${count(texts, 'text')} (${count(open, 'word')}) ${texts === 1 ? 'waits' : 'wait'} for a translation into ${languageName(tag)}.\n`;
  } else stdout.print`Everything is translated into ${languageName(tag)}.\n`;
  if (!write && (changed.length > 0 || origin)) {
    stdout.print`Nothing was written: \`--write\` does that.\n`;
  }
  return exitCodes.clean;
}

function tell(
  { path: file, before, text, added, changed, left, open }: PlannedFile,
  isWritten: boolean,
) {
  const done = [
    ...(before === undefined ? [isWritten ? 'made' : 'would be made'] : []),
    ...(added > 0 ? [`${count(added, 'piece')} added`] : []),
    ...(changed > 0 ? [`${count(changed, 'text')} marked as changed`] : []),
    ...(open.texts > 0 ? [`${count(open.texts, 'text')} to translate`] : []),
    ...left.map(({ place }) => `to be mended by hand: see line ${place.start.line}`),
  ];
  if (done.length > 0 || before !== text) stdout.print`${file}: ${done.join(', ')}\n`;
}

async function put(
  folder: string,
  file: { readonly path: string; readonly text: string; readonly before?: string },
): Promise<void> {
  if (file.before === undefined) {
    await replaceFile(path.join(folder, ...file.path.split('/')), file.text);
    return;
  }
  const { bytes } = await readPlainFile(folder, file.path, largest);
  const mark = Buffer.from(bytes).toString('utf8').startsWith('\uFEFF') ? '\uFEFF' : '';
  await replacePlainFile(folder, file.path, bytes, Buffer.from(mark + file.text));
}
