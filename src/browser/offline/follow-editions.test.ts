import { afterEach, expect, test, vi } from 'vitest';
import { followEditions } from './follow-editions.ts';

/** A worker of which only the state is looked at. */
class Edition extends EventTarget {
  state = 'installing';

  settle(): void {
    this.state = 'installed';
    this.dispatchEvent(new Event('statechange'));
  }
}

afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

/** The notice of a page that is read while these editions are there. */
async function follow(editions: { readonly active?: Edition; readonly installing?: Edition }) {
  vi.useFakeTimers();
  const registration = Object.assign(new EventTarget(), { ...editions, waiting: null });
  const serviceWorker = Object.assign(new EventTarget(), {
    controller: editions.active ?? null,
    register: async () => registration,
  });
  vi.stubGlobal('navigator', { serviceWorker });
  vi.stubGlobal('location', { protocol: 'https:', hostname: 'club.example' });
  vi.stubGlobal('document', { readyState: 'complete' });
  const notice = { hidden: true, dataset: { worker: 'offline.js' }, querySelector: () => null };
  followEditions(notice as unknown as HTMLElement);
  await vi.advanceTimersByTimeAsync(3000);
  return notice;
}

test('an edition that the browser found before the page asked is told when it is there', async () => {
  const installing = new Edition();
  const notice = await follow({ active: new Edition(), installing });
  expect(notice.hidden).toBe(true);
  installing.settle();
  expect(notice.hidden).toBe(false);
});

test('the first edition is none to be told of', async () => {
  const installing = new Edition();
  const notice = await follow({ installing });
  installing.settle();
  expect(notice.hidden).toBe(true);
});
