import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { createLocator } from '../diagnostics/index.ts';
import type { ErrorPlace } from './site-error.ts';

/**
 * Finds what a component was given in the files of a site: a component is not told who shows it. Undefined where the
 * text stands in no file that imports our components, as when it was computed.
 * @param name of the component.
 * @param value what it was given, or undefined for the component itself.
 * @param at how far in the value.
 */
export function locateComponent(
  folder: string,
  name: string,
  value: string | undefined,
  at = 0,
): ErrorPlace | undefined {
  for (const file of sourcesIn(folder)) {
    const text = readFileSync(file, 'utf8');
    if (!/linewright\/astro\/components/.test(text)) continue;
    const tag = text.search(new RegExp(`<${name}\\b`));
    if (tag < 0) continue;
    const found = value === undefined ? tag : text.indexOf(value, tag);
    if (found < 0) continue;
    const { line, column } = createLocator(text)(found + at);
    return { file, line, column };
  }
  return undefined;
}

function sourcesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(?:astro|mdx)$/.test(name))
    .map((name) => path.join(folder, name));
}
