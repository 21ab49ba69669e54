import { type Mode, modes, type PropertyName } from './defaults.ts';

/** The value of a property in a mode; nothing where it is that of the light mode, or there is none. */
export type ValueIn<Name extends PropertyName> = (name: Name, mode: Mode) => string | undefined;

/** A course on the page of another site (`scripts/host-sheet.mjs`): as strong as what its style sheet says. */
export const hostedScope = '.linewright:not(#_)';

/**
 * Rules that give properties their values in each mode. The dark one follows the reader's system, unless the root
 * says `data-theme="light"` or `"dark"`. Runs in the browser too: no Node imports.
 * @param scope `page` for the root of a page, `host` for the element whose shadow the style is in, `hosted` for a course
 *   on the page of another site.
 */
export function lookBlocks<Name extends PropertyName>(
  names: readonly Name[],
  valueIn: ValueIn<Name>,
  scope: 'page' | 'host' | 'hosted' = 'page',
): string {
  const root = (test = '') => {
    if (scope === 'page') return `:root${test}`;
    if (scope === 'hosted') return test === '' ? hostedScope : `:root${test} ${hostedScope}`;
    return test === '' ? ':host' : `:host(${test})`;
  };
  const notLight = root(':not([data-theme="light"])');
  const dark = root('[data-theme="dark"]');
  const [light, inDark, print] = modes.map((mode) =>
    names.flatMap((name) => {
      const value = valueIn(name, mode);
      return value === undefined ? [] : [`--${name}: ${value}`];
    }),
  );
  return [
    rule(root(), light),
    media('(prefers-color-scheme: dark)', rule(notLight, inDark)),
    rule(dark, inDark),
    media('print', rule([root(), notLight, dark].join(',\n'), print)),
  ]
    .filter((text) => text !== '')
    .join('\n');
}

function rule(selector: string, lines: readonly string[] = []): string {
  if (lines.length === 0) return '';
  return `${selector} {\n${lines.map((line) => `  ${line};\n`).join('')}}`;
}

function media(query: string, inner: string): string {
  return inner === '' ? '' : `@media ${query} {\n${inner.replaceAll(/^/gm, '  ')}\n}`;
}
