import path from 'node:path';
import type { CheckedCourse } from '../check/index.ts';
import { type Diagnostic, UserError } from '../diagnostics/index.ts';
import { replaceFile } from '../files/index.ts';
import { courseId } from '../model/index.ts';
import { checkOutputFile } from '../output/index.ts';
import { count, exitCodes, stderr, stdout } from './console.ts';
import { type ExportOptions, exportFormats } from './export-formats.ts';
import { loadCourse, loadToPublish, siteBelow } from './load-course.ts';

/** `linewright export`: checks the course and, if it has no error, writes it as one file. */
export async function exportCourse(folder: string, options: ExportOptions): Promise<number> {
  const format = formatOf(options);
  // A co-author gets drafts and to-dos as well.
  const loaded = await (options.withDirectives
    ? loadCourse(folder)
    : loadToPublish(folder, { language: options.language }));
  const { checked, course, textOf } = loaded;
  const more = checked && format === 'epub' ? await bookFaults(checked) : [];
  stderr.printFindings({ diagnostics: [...loaded.diagnostics, ...more], textOf });
  if (!checked) {
    stderr.print`Nothing was written; an earlier file stands as it was.\n`;
    return exitCodes.findings;
  }
  const inLanguage = options.language === undefined ? '' : `-${options.language}`;
  const name = (options.chapter ?? courseId(course)) + inLanguage;
  const out = options.out ?? path.join(folder, `${name}.${format}`);
  await checkOutputFile(out, folder);
  const content = options.withDirectives
    ? await contentWithDirectives(checked, { textOf, chapter: options.chapter })
    : await contentOf(checked, folder, { ...options, ...siteBelow(loaded, options), format });
  await replaceFile(out, content);
  stdout.print`${out}: ${Math.ceil(content.length / 1000)} KB\n`;
  return exitCodes.clean;
}

async function contentWithDirectives(
  checked: CheckedCourse,
  options: Parameters<typeof import('../publish/pgn/index.ts').makePgnWithDirectives>[1],
): Promise<Uint8Array> {
  const { makePgnWithDirectives } = await import('../publish/pgn/index.ts');
  return Buffer.from(makePgnWithDirectives(checked, options));
}

async function bookFaults(checked: CheckedCourse): Promise<readonly Diagnostic[]> {
  const { bookFindings } = await import('../publish/book/index.ts');
  return bookFindings(checked);
}

type Format = (typeof exportFormats)[number];

function formatOf(options: ExportOptions): Format {
  const { format, out, chapter, latin1, date, withDirectives } = options;
  const ending = out === undefined ? '' : path.extname(out).slice(1).toLowerCase();
  const chosen = format ?? exportFormats.find((known) => known === ending);
  if (chosen === undefined) {
    throw new UserError(
      'an export needs a format',
      'give `--format epub` or `--format pgn`, or end the name of the file so',
    );
  }
  if (chosen !== 'pgn' && (chapter !== undefined || latin1 || withDirectives)) {
    const given = latin1 ? 'latin1' : withDirectives ? 'with-directives' : 'chapter';
    throw new UserError(`\`--${given}\` is for PGN files`, 'leave it out, or give `--format pgn`');
  }
  if (options.language !== undefined && withDirectives) {
    throw new UserError(
      'a course goes to a co-author in the language that it is written in',
      'leave out `--language`, or `--with-directives`',
    );
  }
  if (latin1 && withDirectives) {
    throw new UserError(
      'a course may have signs that ISO 8859-1 lacks',
      'leave out `--latin1`, or `--with-directives`',
    );
  }
  if (chosen !== 'epub' && date !== undefined) {
    throw new UserError('`--date` is for e-books', 'leave it out, or give `--format epub`');
  }
  return chosen;
}

async function contentOf(
  checked: CheckedCourse,
  folder: string,
  { format, site, date, chapter, latin1 }: ExportOptions & { readonly format: Format },
): Promise<Uint8Array> {
  switch (format) {
    case 'epub': {
      const { courseBook } = await import('../pipeline/build/index.ts');
      return courseBook(checked, folder, { site, date });
    }
    case 'pgn': {
      const { makePgn, toLatin1 } = await import('../publish/pgn/index.ts');
      const text = makePgn(checked, { chapter, site });
      if (!latin1) return Buffer.from(text);
      const { bytes, lost } = toLatin1(text);
      if (lost > 0) stderr.print`${count(lost, 'sign')} ISO 8859-1 lacks became \`?\`.\n`;
      return bytes;
    }
  }
}
