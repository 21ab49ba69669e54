/**
 * Runs on every page before its text is parsed, so it is small: applies the reader's settings before the first paint, and
 * decides how much of a chapter is laid out at first.
 */
import { dataOf } from '../contract/attributes.ts';
import { settingsAsked } from '../contract/reader-settings.ts';
import { piecemeal } from './piecemeal.ts';
import { applySettings } from './settings/apply-settings.ts';

const root = document.documentElement;
const own = document.currentScript as HTMLScriptElement;
const { settings = '', written = 'letters', chapter } = dataOf('begin', own);
const loaded = new Map<string, Promise<unknown>>();

/** Loads a script once. One needed for the first lines blocks rendering, where browsers can. */
function load(path: string, first = false): Promise<unknown> {
  const loading =
    loaded.get(path) ??
    new Promise((resolve) => {
      const script = document.createElement('script');
      script.src = path;
      if (first) script.setAttribute('blocking', 'render');
      script.onload = resolve;
      document.head.append(script);
    });
  loaded.set(path, loading);
  return loading;
}

function apply(first = false): void {
  applySettings();
  const { notation = written, sound } = root.dataset;
  if (notation !== written || sound !== undefined) void load(settings, first);
}

apply(true);
// Back from the browser's memory, or changed in another window.
addEventListener('pageshow', ({ persisted }) => persisted && apply());
addEventListener('storage', () => apply());
// What the browser's scripts write has letters, which only that script makes figures.
if (written === 'figurines') addEventListener('load', () => load(settings));

addEventListener('click', (event) => {
  const link = event.target instanceof Element && event.target.closest<HTMLElement>('[data-asks]');
  if (!link || event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return;
  event.preventDefault();
  void Promise.all([load(dataOf('settings', link).asks ?? ''), load(settings)]).then(() =>
    dispatchEvent(new CustomEvent(settingsAsked, { detail: link })),
  );
});

/*
 * A reader who comes anew to the top of a chapter has only what is near the window laid out at first
 * (`site/styles/moves.css`), so that a phone shows the first lines early. Who comes to a place in the
 * text, or back to where he was, needs all of it at once: the browser goes there by its height.
 */
const [navigation] = performance.getEntriesByType('navigation');
if (
  chapter !== undefined &&
  location.hash === '' &&
  (navigation as PerformanceNavigationTiming)?.type === 'navigate'
) {
  root.classList.add(piecemeal);
}
