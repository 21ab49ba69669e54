import { isUtf8 } from 'node:buffer';
import { applyFixes, type Fix } from '../diagnostics/index.ts';
import { FileRefusedError, readPlainFile, refusals, replacePlainFile } from '../files/index.ts';
import { decodeGame, utf16Of } from '../movetext/index.ts';
import type { LoadedCourse } from '../pipeline/index.ts';
import { gamesLimit } from '../read/index.ts';

/**
 * Makes the safe repairs in the author's files. @returns how many.
 * @throws FileRefusedError for a file that has changed since the check.
 */
export async function mendFiles(
  folder: string,
  { diagnostics, textOf }: Pick<LoadedCourse, 'diagnostics' | 'textOf'>,
): Promise<number> {
  const fixes = diagnostics.flatMap((found) => found.fixes ?? []);
  return makeFixes(folder, { fixes, textOf });
}

/**
 * Edits the author's files. @returns how many edits.
 * @throws FileRefusedError for a file that has changed since it was read.
 */
export async function makeFixes(
  folder: string,
  { fixes: all, textOf }: Pick<LoadedCourse, 'textOf'> & { readonly fixes: readonly Fix[] },
): Promise<number> {
  const byFile = new Map<string, Fix[]>();
  for (const fix of all) {
    const known = byFile.get(fix.place.file);
    if (known) known.push(fix);
    else byFile.set(fix.place.file, [fix]);
  }
  for (const [file, fixes] of byFile) {
    const { bytes } = await readPlainFile(folder, file, gamesLimit);
    const { text, encode } = decode(bytes);
    // Places do not count a byte order mark.
    const mark = /^\uFEFF*/.exec(text)?.[0] ?? '';
    const read = utf16Of(bytes)
      ? text.slice(mark.length)
      : decodeGame(bytes).replace(/^\uFEFF+/, '');
    if (read !== textOf(file)) throw new FileRefusedError(file, refusals.changed);
    const mended = mark + applyFixes(text.slice(mark.length), fixes);
    await replacePlainFile(folder, file, bytes, encode(mended));
  }
  return all.length;
}

/** The text of a file and its encoding: old PGN files stay ISO 8859-1. */
function decode(bytes: Uint8Array): { text: string; encode: (text: string) => Buffer } {
  const buffer = Buffer.from(bytes);
  const utf16 = utf16Of(bytes);
  if (utf16 === 'utf-16be') {
    return {
      text: buffer
        .subarray(0, buffer.length & ~1)
        .swap16()
        .toString('utf16le'),
      encode: (text) => Buffer.from(text, 'utf16le').swap16(),
    };
  }
  const encoding = utf16 ? 'utf16le' : isUtf8(bytes) ? 'utf8' : 'latin1';
  return { text: buffer.toString(encoding), encode: (text) => Buffer.from(text, encoding) };
}
