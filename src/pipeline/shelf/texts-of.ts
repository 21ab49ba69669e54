import type { Diagnostic } from '../../diagnostics/index.ts';
import { readTextFile } from '../../read/index.ts';

/** Texts of the files with findings, read again: a course is released before its findings are printed. */
export async function textsOf(
  folder: string,
  diagnostics: readonly Diagnostic[],
): Promise<(file: string) => string | undefined> {
  const texts = new Map<string, string | undefined>();
  for (const diagnostic of diagnostics) {
    for (const { place } of [diagnostic, ...diagnostic.related]) {
      if (texts.has(place.file)) continue;
      // An unreadable file has a finding of its own.
      texts.set(place.file, (await readTextFile(folder, place.file, () => {}))?.text);
    }
  }
  return (file) => texts.get(file);
}
