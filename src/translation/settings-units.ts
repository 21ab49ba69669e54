import { createLocator, topOf } from '../diagnostics/index.ts';
import { type SourceFile, yamlTexts } from '../read/index.ts';
import type { TranslationUnit } from './chapter-units.ts';
import { plainText } from './texts.ts';

/** The settings that say something in words, in the order in which a translation gets them. */
const names = ['title', 'summary', 'for', 'teaches'];

/** The words of `course.yaml`, as one unit that a translation has as well. */
export function settingsUnits(
  { path: file, text }: SourceFile,
  source: string,
): readonly TranslationUnit[] {
  const pointAt = createLocator(text);
  const texts = yamlTexts(text, names).flatMap((said) => {
    const place = { file, start: pointAt(said.start), end: pointAt(said.end) };
    return plainText(said.text, place, source) ?? [];
  });
  return [
    {
      kind: 'front',
      place: topOf(file),
      board: [],
      texts,
      prose: { board: [], texts: [] },
    },
  ];
}

/** The settings of a translation that has just been begun: the original's words, marked. */
export function newSettings({ text }: SourceFile, mark: string): string {
  const said = yamlTexts(text, names);
  return names
    .flatMap((name) => {
      const values = said.filter((each) => each.name === name).map((each) => each.text.trim());
      // A text in JSON is one in YAML.
      const written = values.map((value) => JSON.stringify(mark + value));
      if (name === 'teaches' && written.length > 0) {
        return [`${name}:`, ...written.map((value) => `  - ${value}`)];
      }
      return written.map((value) => `${name}: ${value}`);
    })
    .map((line) => `${line}\n`)
    .join('');
}
