/**
 * What Astro makes of the pages when the package is built (`scripts/build-pages.mjs`): one function, which
 * `build/render-page.ts` loads. Only the package's build needs Astro.
 */
import { createApp } from 'astro/app/entrypoint';
import type { PageLocals } from './site-data.ts';

const app = createApp({ streaming: false });

// What goes wrong in a page is a fault of ours, and no page about it is to be published.
app.renderError = async (_request, { status, error }) => {
  throw error instanceof Error ? error : new Error(`a page could not be made: ${status}`);
};

/** A page as HTML in UTF-8. @throws what its template throws. */
export async function renderPage(locals: PageLocals): Promise<Uint8Array> {
  const response = await app.render(new Request(`http://page/${locals.page}`), { locals });
  return new Uint8Array(await response.arrayBuffer());
}
