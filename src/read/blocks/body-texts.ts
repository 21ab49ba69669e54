import { parse } from 'yaml';

/**
 * The texts of a block's body by their names, as written, for code that writes the block anew. Empty where the body
 * is no list of `name: value` lines.
 */
export function bodyTexts(content: string): ReadonlyMap<string, readonly string[]> {
  const body: unknown = parse(content);
  if (typeof body !== 'object' || body === null) return new Map();
  return new Map(
    Object.entries(body).map(([name, value]) => [
      name,
      (Array.isArray(value) ? value : [value]).map(String),
    ]),
  );
}
