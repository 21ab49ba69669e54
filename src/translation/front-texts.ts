import { createLocator } from '../diagnostics/index.ts';
import { yamlTexts } from '../read/index.ts';
import { plainText, type Text } from './texts.ts';

/** What the front matter of a chapter says in words, in a fixed order. */
export function frontTexts(file: string, text: string, source: string): Text[] {
  const front = /^---[ \t]*\r?\n([\s\S]*?)^---[ \t]*$/m.exec(text);
  if (front?.index !== 0 || front[1] === undefined) return [];
  const from = front[0].indexOf(front[1]);
  const pointAt = createLocator(text);
  return yamlTexts(front[1], ['title', 'menu', 'summary']).flatMap((said) => {
    const place = { file, start: pointAt(from + said.start), end: pointAt(from + said.end) };
    return plainText(said.text, place, source) ?? [];
  });
}
