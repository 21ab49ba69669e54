import path from 'node:path';
import type { CheckedCourse } from '../check/index.ts';
import { replaceFile } from '../files/index.ts';
import { courseId } from '../model/index.ts';
import { checkOutputFile } from '../output/index.ts';
import { bookFindings } from '../publish/book/index.ts';
import { PublishError } from '../publish/index.ts';
import { makePgn, toLatin1 } from '../publish/pgn/index.ts';
import { count, exitCodes, stderr, stdout } from './console.ts';
import { courseBook } from './course-book.ts';
import { type ExportOptions, exportFormats } from './export-formats.ts';
import { loadToPublish } from './load-course.ts';

/** `linewright export`: checks the course and, if it has no error, writes it as one file. */
export async function exportCourse(folder: string, options: ExportOptions): Promise<number> {
  const format = formatOf(options);
  const loaded = await loadToPublish(folder);
  const { checked, course, textOf } = loaded;
  const more = checked && format === 'epub' ? bookFindings(checked) : [];
  stderr.printFindings({ diagnostics: [...loaded.diagnostics, ...more], textOf });
  if (!checked) {
    stderr.print`Nothing was written; an earlier file stands as it was.\n`;
    return exitCodes.findings;
  }
  const name = options.chapter ?? courseId(course);
  const out = options.out ?? path.join(folder, `${name}.${format}`);
  await checkOutputFile(out, folder);
  const content = await contentOf(checked, folder, { ...options, format });
  await replaceFile(out, content);
  stdout.print`${out}: ${Math.ceil(content.length / 1000)} KB\n`;
  return exitCodes.clean;
}

type Format = (typeof exportFormats)[number];

function formatOf({ format, out, chapter, latin1, date }: ExportOptions): Format {
  const ending = out === undefined ? '' : path.extname(out).slice(1).toLowerCase();
  const chosen = format ?? exportFormats.find((known) => known === ending);
  if (chosen === undefined) {
    throw new PublishError(
      'an export needs a format',
      'give `--format epub` or `--format pgn`, or end the name of the file so',
    );
  }
  if (chosen !== 'pgn' && (chapter !== undefined || latin1)) {
    throw new PublishError(
      `\`--${latin1 ? 'latin1' : 'chapter'}\` is for PGN files`,
      'leave it out, or give `--format pgn`',
    );
  }
  if (chosen !== 'epub' && date !== undefined) {
    throw new PublishError('`--date` is for e-books', 'leave it out, or give `--format epub`');
  }
  return chosen;
}

async function contentOf(
  checked: CheckedCourse,
  folder: string,
  { format, site, date, chapter, latin1 }: ExportOptions & { readonly format: Format },
): Promise<Uint8Array> {
  switch (format) {
    case 'epub':
      return courseBook(checked, folder, { site, date });
    case 'pgn': {
      const text = makePgn(checked, { chapter, site });
      if (!latin1) return Buffer.from(text);
      const { bytes, lost } = toLatin1(text);
      if (lost > 0) stderr.print`${count(lost, 'sign')} ISO 8859-1 lacks became \`?\`.\n`;
      return bytes;
    }
  }
}
