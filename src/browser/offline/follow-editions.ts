import { dataOf } from '../../contract/attributes.ts';
import { isLocalHost } from './local-host.ts';
import { takeOver } from './take-over.ts';

/**
 * Ms after the page's load: fetching and hashing the whole site would hold up the first lines and scrolls on a phone.
 */
const quiet = 3000;

/**
 * Keeps the course for reading offline, and tells of a newer edition. Never reloads the page by itself: the reader may be in
 * the middle of a line.
 * @param notice stands hidden in the page, and names the worker in `data-worker`.
 */
export function followEditions(notice: HTMLElement): void {
  const { worker } = dataOf('edition', notice);
  const { serviceWorker } = navigator;
  // Missing where the address is not safe (http:, file:). Some readers pay by the byte.
  if (worker === undefined || !serviceWorker || !location.protocol.startsWith('http')) return;
  if ('connection' in navigator && (navigator.connection as { saveData?: boolean }).saveData)
    return;

  let registration: ServiceWorkerRegistration | undefined;
  const tell = (): void => {
    if (!isLocalHost(location.hostname)) notice.hidden = false;
  };
  let asked = false;
  let first = serviceWorker.controller === null;
  notice.querySelector('a')?.addEventListener('click', (event) => {
    if (!registration?.waiting) return;
    event.preventDefault();
    asked = true;
    registration.waiting.postMessage(takeOver);
  });
  serviceWorker.addEventListener('controllerchange', () => {
    // Another window of the course may have asked.
    if (asked) location.reload();
    else if (!first) tell();
    first = false;
  });

  const watch = (edition: ServiceWorker | null | undefined): void =>
    edition?.addEventListener('statechange', () => {
      if (edition.state === 'installed' && registration?.active) tell();
    });
  const start = async (): Promise<void> => {
    registration = await serviceWorker.register(worker);
    const { installing, waiting } = registration;
    if (waiting) tell();
    // The browser may have found it before we asked: it looks by itself while the page loads.
    watch(installing);
    registration.addEventListener('updatefound', () => watch(registration?.installing));
  };
  const report = (error: unknown): void => console.warn('This course is not kept offline.', error);
  const startLater = () => setTimeout(() => start().catch(report), quiet);
  if (document.readyState === 'complete') startLater();
  else addEventListener('load', startLater);
}
