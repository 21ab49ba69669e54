import { createHash } from 'node:crypto';
import type { BuiltCourse } from '../../contract/index.ts';
import { defaultColour } from '../../look/index.ts';
import type { SiteFile } from '../site-data.ts';

/**
 * The style sheet with the cloths of a shelf's covers, which no page may have in itself (`security-policy.ts`);
 * nothing where all have that of the house.
 */
export function clothSheet(built: readonly BuiltCourse[]): SiteFile | undefined {
  const own = built.flatMap(({ cloth }, index) => {
    const isOurs =
      cloth.light === defaultColour('cover', 'light') &&
      cloth.dark === defaultColour('cover', 'dark');
    return isOurs ? [] : [{ book: `.cloth-${index + 1}`, ...cloth }];
  });
  if (own.length === 0) return undefined;
  const rules = own.map(({ book, light, dark }) =>
    [
      `${book}{--cover:${light}}`,
      `@media(prefers-color-scheme:dark){:root:not([data-theme="light"]) ${book}{--cover:${dark}}}`,
      `:root[data-theme="dark"] ${book}{--cover:${dark}}`,
    ].join('\n'),
  );
  const content = `${rules.join('\n')}\n`;
  const edition = createHash('sha256').update(content).digest('hex').slice(0, 12);
  return { path: `cloths.${edition}.css`, content };
}
