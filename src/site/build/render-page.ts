import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { PageLocals } from '../site-data.ts';
import { packageRoot } from './package-root.ts';

/** What `scripts/build-pages.mjs` makes of `pages-entry.ts`. */
interface Pages {
  readonly renderPage: (locals: PageLocals) => Promise<Uint8Array>;
}

const file = join(packageRoot, 'dist', 'site', 'pages', 'entry.mjs');
let pages: Promise<Pages> | undefined;

/** A page as HTML in UTF-8. */
export async function renderPage(locals: PageLocals): Promise<Uint8Array> {
  const pages = await loadPages();
  return pages.renderPage(locals);
}

/** Loads the pages ahead of need. */
export function loadPages(): Promise<Pages> {
  pages ??= import(pathToFileURL(file).href).catch((cause: unknown) => {
    throw new Error(`${file} does not load: build the package with \`npm run build\``, { cause });
  });
  return pages;
}
