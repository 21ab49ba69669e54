import { isUtf8 } from 'node:buffer';
import { readFile, realpath, rename, stat, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { applyFixes, type Diagnostic, type Fix } from '../diagnostics/index.ts';

/** Makes the safe repairs in the author's files and returns how many they were. */
export async function mendFiles(
  folder: string,
  diagnostics: readonly Diagnostic[],
): Promise<number> {
  const byFile = new Map<string, Fix[]>();
  for (const fix of diagnostics.flatMap(({ fixes = [] }) => fixes)) {
    byFile.set(fix.place.file, [...(byFile.get(fix.place.file) ?? []), fix]);
  }
  for (const [file, fixes] of byFile) {
    // A link stays a link: the file that it leads to is mended.
    const full = await realpath(path.join(folder, file));
    const bytes = await readFile(full);
    // Old PGN files are ISO 8859-1, and stay so.
    const encoding = isUtf8(bytes) ? 'utf8' : 'latin1';
    const text = bytes.toString(encoding);
    // The places count from behind a byte order mark.
    const mark = /^\uFEFF*/.exec(text)?.[0] ?? '';
    const mended = mark + applyFixes(text.slice(mark.length), fixes);
    const fresh = `${full}.linewright-new`;
    await writeFile(fresh, Buffer.from(mended, encoding), { mode: (await stat(full)).mode });
    await rename(fresh, full);
  }
  return [...byFile.values()].flat().length;
}
