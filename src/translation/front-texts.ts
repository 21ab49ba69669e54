import { isMap, isScalar, isSeq, parseDocument } from 'yaml';
import { createLocator } from '../diagnostics/index.ts';
import { plainText, type Text } from './texts.ts';

/** What the front matter of a chapter says in words, in a fixed order. */
export function frontTexts(file: string, text: string, source: string): Text[] {
  const front = /^---[ \t]*\r?\n([\s\S]*?)^---[ \t]*$/m.exec(text);
  if (front?.index !== 0 || front[1] === undefined) return [];
  return yamlTexts(file, text, source, {
    names: ['title', 'summary'],
    from: front[0].indexOf(front[1]),
    yaml: front[1],
  });
}

/** The words of a YAML text, by the names of their settings. */
export function yamlTexts(
  file: string,
  text: string,
  source: string,
  {
    names,
    from = 0,
    yaml = text,
  }: { readonly names: readonly string[]; readonly from?: number; readonly yaml?: string },
): Text[] {
  const { contents } = parseDocument(yaml, { logLevel: 'silent' });
  if (!isMap(contents)) return [];
  const pointAt = createLocator(text);
  return names.flatMap((name) => {
    const value: unknown = contents.get(name, true);
    const items = isScalar(value) ? [value] : isSeq(value) ? value.items.filter(isScalar) : [];
    return items.flatMap(({ value: said, range, type }) => {
      if (typeof said !== 'string' || !range) return [];
      const start = from + (startOfScalar(yaml, range[0], type) ?? range[0]);
      const end = from + range[1];
      const made = plainText(said, { file, start: pointAt(start), end: pointAt(end) }, source);
      return made ? [made] : [];
    });
  });
}

/** Behind the sign that opens a scalar. */
function startOfScalar(yaml: string, start: number, type: string | undefined): number | undefined {
  if (type === 'QUOTE_DOUBLE' || type === 'QUOTE_SINGLE') return start + 1;
  if (type !== 'BLOCK_FOLDED' && type !== 'BLOCK_LITERAL') return start;
  const first = /^[^\n]*\n\s*/.exec(yaml.slice(start));
  return first ? start + first[0].length : undefined;
}
