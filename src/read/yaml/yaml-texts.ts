import { isMap, isScalar, isSeq, parseDocument } from 'yaml';

/** A text of a YAML mapping and its range, without quotation marks. */
export interface YamlText {
  readonly name: string;
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

/** The texts of some keys of a YAML mapping, in the order given; list items one by one. */
export function yamlTexts(yaml: string, names: readonly string[]): YamlText[] {
  const { contents } = parseDocument(yaml, { logLevel: 'silent' });
  if (!isMap(contents)) return [];
  return names.flatMap((name) => {
    const value: unknown = contents.get(name, true);
    const items = isScalar(value) ? [value] : isSeq(value) ? value.items.filter(isScalar) : [];
    return items.flatMap(({ value: text, range, type }): YamlText[] => {
      if (typeof text !== 'string' || !range) return [];
      const [from, end] = range;
      return [{ name, text, start: startOfText(yaml, from, type), end }];
    });
  });
}

/** The offset behind the quotation mark that opens a scalar. */
function startOfText(yaml: string, from: number, type: string | undefined): number {
  if (type === 'QUOTE_DOUBLE' || type === 'QUOTE_SINGLE') return from + 1;
  if (type !== 'BLOCK_FOLDED' && type !== 'BLOCK_LITERAL') return from;
  const [opening = ''] = /^[^\n]*\n\s*/.exec(yaml.slice(from)) ?? [];
  return from + opening.length;
}
