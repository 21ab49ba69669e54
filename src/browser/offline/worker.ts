/**
 * The service worker: keeps an edition of the whole site, and answers from it. The site's build
 * puts the list of files before this script (`src/site/offline`).
 *
 * An edition is taken in whole or not at all: each file must have the content that the list names,
 * so that a visit during an upload, or a full disk, leaves what was kept before.
 */
import { clientsClaim } from 'workbox-core/clientsClaim.js';
import { PrecacheController } from 'workbox-precaching/PrecacheController.js';
import { PrecacheRoute } from 'workbox-precaching/PrecacheRoute.js';
import { registerRoute } from 'workbox-routing/registerRoute.js';
import { setCatchHandler } from 'workbox-routing/setCatchHandler.js';
import { isLocalHost } from './local-host.ts';
import { takeOver } from './take-over.ts';

/** What the script needs of a worker; the types of pages and of workers exclude each other. */
interface WorkerScope {
  readonly courseFiles: Readonly<Record<string, string>>;
  readonly registration: { readonly active: object | null; readonly scope: string };
  skipWaiting(): Promise<void>;
  addEventListener(
    type: 'install' | 'activate' | 'message',
    listener: (event: { readonly data?: unknown; waitUntil(done: Promise<unknown>): void }) => void,
  ): void;
}
const scope = globalThis as unknown as WorkerScope;
const local = isLocalHost(location.hostname);
const controller = new PrecacheController();
controller.addToCacheList(
  Object.entries(scope.courseFiles).map(([url, hash]) => ({
    url,
    revision: hash.slice(0, 12),
    integrity: `sha256-${hash}`,
  })),
);

scope.addEventListener('install', (event) => {
  if (local) void scope.skipWaiting();
  event.waitUntil(
    controller.install(event).catch(async (error: unknown) => {
      // With no edition before it, half of one only takes room.
      if (!scope.registration.active) await caches.delete(controller.strategy.cacheName);
      throw error;
    }),
  );
});
scope.addEventListener('activate', (event) => event.waitUntil(controller.activate(event)));
scope.addEventListener('message', ({ data }) => {
  if (data === takeOver) void scope.skipWaiting();
});
clientsClaim();

// An address may carry a question for its page: `practice.html?chapter=2`.
const kept = new PrecacheRoute(controller, { ignoreURLParametersMatching: [/./] });
if (local) {
  const { handler } = kept;
  registerRoute(kept.match, {
    handle: (options) => fetch(options.request).catch(() => handler.handle(options)),
  });
} else registerRoute(kept);

/** Pictures in double size are not kept: offline the single size stands in for them. */
const twice = /@2x\.png$/;
registerRoute(
  ({ url, request }) =>
    url.href.startsWith(scope.registration.scope) &&
    (request.mode === 'navigate' || twice.test(url.pathname)),
  async ({ request }) => fetch(request),
);

/**
 * What the pages of a shelf load of its courses: a course's own worker keeps it, for the edition that the reader has
 * opened. The worker of the shelf answers its pages, and asks there only where there is no network.
 */
const ofCourse = /\/(?:course-(?:table|notes)\.[0-9a-f]+\.js$|pagefind\/)/;
registerRoute(
  ({ url }) => url.href.startsWith(scope.registration.scope) && ofCourse.test(url.pathname),
  async ({ request }) => fetch(request),
);

setCatchHandler(async ({ request }) => {
  const { href } = new URL(request.url);
  if (ofCourse.test(new URL(href).pathname)) {
    // Kept files have their edition behind a question mark.
    const elsewhere = await caches.match(request, { ignoreSearch: true });
    if (elsewhere !== undefined) return elsewhere;
  }
  const stands = twice.test(href)
    ? await controller.matchPrecache(href.replace(twice, '.png'))
    : undefined;
  if (stands !== undefined) return stands;
  // What was kept may be gone, and what the server has now may be another edition.
  return fetch(request).catch(async (error: unknown) => {
    const missing =
      request.mode === 'navigate' ? await controller.matchPrecache('404.html') : undefined;
    if (missing === undefined) throw error;
    return new Response(missing.body, { status: 404, headers: missing.headers });
  });
});
