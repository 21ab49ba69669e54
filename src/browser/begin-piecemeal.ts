/**
 * Runs before a chapter's text is parsed, which waits for it: so it is small. A reader who
 * comes anew to the top of a chapter has only what is near the window laid out at first
 * (`site/styles/moves.css`), so that a phone shows the first lines early. Who comes to a place in the
 * text, or back to where he was, needs all of it at once: the browser goes there by its height.
 */
import { piecemeal } from './piecemeal.ts';

const [navigation] = performance.getEntriesByType('navigation');
if (location.hash === '' && (navigation as PerformanceNavigationTiming)?.type === 'navigate') {
  document.documentElement.classList.add(piecemeal);
}
