import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { makeTemporaryFolder, prepareOutput, replaceFolder } from '../output/index.ts';
import { cacheFolder } from '../pipeline/index.ts';
import { dayOf, today, toldDate } from '../pipeline/told-date.ts';
import { type LetterChoice, makeLetter, PublishError } from '../publish/index.ts';
import { count, exitCodes, stderr, stdout } from './console.ts';
import { loadToPublish, siteBelow } from './load-course.ts';
import { printCarried } from './print-carried.ts';

export interface LetterOptions {
  /** A language that the course is translated into. */
  readonly language?: string;
  readonly section?: string;
  readonly positions?: readonly string[];
  /** The name of news, or `latest`. */
  readonly news?: string;
  readonly out?: string;
  readonly site?: string;
  readonly images?: string;
  /** As `2026-11-25`. */
  readonly date?: string;
  readonly subject?: string;
  readonly from?: string;
  readonly to?: string;
  readonly sender?: string;
  readonly unsubscribe?: string;
  readonly oneClick?: boolean;
}

/**
 * `linewright letter`: checks the course and, if it has no error, writes a folder with
 * `letter.html`, `letter.txt`, `letter.eml` and `images/`.
 */
export async function letter(
  chapter: string | undefined,
  dir: string | undefined,
  options: LetterOptions,
): Promise<number> {
  const { choice, folder } = choose(chapter, dir, options);
  const loaded = await loadToPublish(folder, { language: options.language });
  if (!loaded.checked) {
    stderr.printFindings(loaded);
    stderr.print`Nothing was written; an earlier letter stands as it was.\n`;
    return exitCodes.findings;
  }
  const { images, subject, from, to, sender, unsubscribe, oneClick } = options;
  const { site } = siteBelow(loaded, options);
  // The start of the day: the same letter if made again, and not from the future, which looks like
  // spam (common practice, no source).
  const date = options.date ? dayOf(options.date) : (toldDate() ?? dayOf(today()));
  const cacheDir = cacheFolder();
  const head = { subject, from, to, sender, unsubscribe, oneClick };
  const settings = { folder, date, site, images, ...head, cacheDir };
  const made = await makeLetter(loaded.checked, choice, settings);
  const diagnostics = [...loaded.diagnostics, ...made.findings];
  stderr.printFindings({ diagnostics, textOf: loaded.textOf });

  const shown =
    options.out ??
    path.join(folder, 'letters', ...(options.language ? [options.language] : []), made.name);
  const out = await prepareOutput(shown, folder, options.out === undefined);
  const work = await makeTemporaryFolder();
  try {
    const files: (readonly [string, string | Uint8Array])[] = [
      ['letter.html', made.html],
      ['letter.txt', made.text],
      ['letter.eml', made.message],
      ...[...made.pictures].map(([name, { bytes }]) => [name, bytes] as const),
    ];
    const whole = path.join(work.path, 'letter');
    await mkdir(path.join(whole, 'images'), { recursive: true });
    for (const [name, content] of files) await writeFile(path.join(whole, name), content);
    printCarried(shown, await replaceFolder(whole, out));
  } finally {
    await work.remove();
  }
  const html = kilobytes(Buffer.byteLength(made.html));
  const text = kilobytes(Buffer.byteLength(made.text));
  const message = kilobytes(made.message.length);
  const pictures = count(made.pictures.size, 'picture');
  stdout.print`${shown}: letter.html ${html}, letter.txt ${text}, letter.eml ${message}, ${pictures}\n`;
  return exitCodes.clean;
}

function choose(
  chapter: string | undefined,
  dir: string | undefined,
  { section, positions, news }: LetterOptions,
): { choice: LetterChoice; folder: string } {
  if (news !== undefined && positions === undefined && section === undefined && !dir) {
    return { choice: { news: news === 'latest' ? undefined : news }, folder: chapter ?? '.' };
  }
  if (positions === undefined && news === undefined) {
    if (chapter !== undefined) return { choice: { chapter, section }, folder: dir ?? '.' };
    throw new PublishError(
      'a letter needs a chapter, positions or news',
      'write `linewright letter 1`, `linewright letter --positions main,iqp` or `linewright letter --news latest`',
    );
  }
  if (dir !== undefined || section !== undefined || news !== undefined) {
    throw new PublishError(
      'a letter tells either a chapter, or positions, or news',
      'leave out all but one of the chapter, `--positions` and `--news`',
    );
  }
  return { choice: { positions: positions ?? [] }, folder: chapter ?? '.' };
}

function kilobytes(bytes: number): string {
  return `${Math.ceil(bytes / 1000)} KB`;
}
