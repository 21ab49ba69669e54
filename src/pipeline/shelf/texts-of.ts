import type { Diagnostic } from '../../diagnostics/index.ts';
import { readTextFile } from '../../read/index.ts';

/** The texts of the files that findings stand in: courses are let go before their findings are told. */
export async function textsOf(
  folder: string,
  diagnostics: readonly Diagnostic[],
): Promise<(file: string) => string | undefined> {
  const texts = new Map<string, string | undefined>();
  for (const diagnostic of diagnostics) {
    for (const { place } of [diagnostic, ...diagnostic.related]) {
      if (texts.has(place.file)) continue;
      // What cannot be read has a finding that says so.
      texts.set(place.file, (await readTextFile(folder, place.file, () => {}))?.text);
    }
  }
  return (file) => texts.get(file);
}
