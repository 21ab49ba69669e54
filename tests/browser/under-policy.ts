/** The example course on a host with a policy of its own. */
import type { BrowserContextOptions, Page } from 'playwright-core';
import { type Demo, demoBase, openPage, serveFolder } from './browser.ts';

/** What a careful host sends with every file. */
export const strict = "default-src 'self'";

export interface Hosted {
  readonly page: Page;
  readonly address: string;
  /** Serves another page from the course's own host. */
  readonly addPage: (name: string, html: string) => Promise<string>;
}

/** What a host with a policy sends with every file. */
export const headersOf = (policy: string) => ({
  'content-security-policy': policy,
  'x-content-type-options': 'nosniff',
});

/** Runs `use` at a host that sends this policy; returns all that was refused, and other faults. */
export async function under(
  demo: Demo,
  policy: string,
  use: (hosted: Hosted) => Promise<void>,
  options?: BrowserContextOptions,
): Promise<string[]> {
  const headers = headersOf(policy);
  const { address, close } = await serveFolder(demo.site, demoBase, headers);
  const { page, faults } = await openPage(demo.browser, options);
  const refused: string[] = [];
  await page.exposeFunction('noteRefused', (text: string) => refused.push(text));
  await page.addInitScript(() => {
    const note: unknown = Reflect.get(globalThis, 'noteRefused');
    document.addEventListener('securitypolicyviolation', (event) => {
      const { effectiveDirective, blockedURI, sample } = event;
      if (typeof note === 'function') {
        note(`${location.pathname}: ${effectiveDirective} ${blockedURI} ${sample}`);
      }
    });
  });
  const addPage = async (name: string, body: string) => {
    await page.route(address + name, (route) =>
      route.fulfill({ body, headers: { ...headers, 'content-type': 'text/html' } }),
    );
    return address + name;
  };
  try {
    await use({ page, address, addPage });
    // Reports are tasks of their own: none may come after the last look.
    await page.evaluate(() => new Promise((resolve) => setTimeout(resolve, 50)));
    return [...new Set([...refused, ...faults.list])];
  } finally {
    await page.context().close();
    close();
  }
}
