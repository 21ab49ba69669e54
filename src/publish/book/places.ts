import type { Nodes } from 'hast';
import { elementsIn } from '../../site/render/index.ts';
import type { BookPlaces } from './fit-tree.ts';

/** Where the links of one page lead: its own file, and what every file of the book has. */
export function hrefIn(
  page: string,
  idsOf: ReadonlyMap<string, ReadonlySet<string>>,
  site: string | undefined,
): BookPlaces['href'] {
  return (url) => {
    if (/^(?:https?|mailto|tel):/i.test(url)) return url;
    const [, file = '', query = '', fragment = ''] =
      /^([^?#]*)(\?[^#]*)?(?:#(.*))?$/s.exec(url) ?? [];
    const target = file === '' ? page : bookName(file);
    const ids = idsOf.get(target);
    if (ids === undefined) return site && !/^[\\/.]/.test(file) ? `${site}/${url}` : undefined;
    const there = target === page ? '' : target;
    if (fragment !== '' && ids.has(decoded(fragment))) return `${there}#${fragment}`;
    // A heading that is not there: its page is.
    return query === '' && there !== '' ? there : undefined;
  };
}

/** An author may name a page of the site, `main.html`; in the book it has another ending. */
function bookName(file: string): string {
  return decoded(file).replace(/\.html$/, '.xhtml');
}

export function idsIn(tree: Nodes): ReadonlySet<string> {
  const ids = new Set<string>();
  for (const { properties } of elementsIn(tree)) {
    if (typeof properties.id === 'string') ids.add(properties.id);
  }
  return ids;
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
