/**
 * Gives the words of the site their own language and direction where the course has another: for voices, for
 * hyphenation, and so that `2 minutes.` does not read `.minutes 2`. Loaded only where the site has no words in
 * the language of the course, and that is written in other letters.
 */
import { isFallback } from './is-fallback.ts';

const fallback = { lang: 'en', dir: 'ltr' };
const { lang, dir } = document.documentElement;
const own = { lang, dir };

const apart = 'script, style, template, noscript, use, .move, .prose-move, .board-choice';
const marked = new WeakSet<Element>();

function mark(element: Element): void {
  if (element.matches(apart)) return;
  const says = isFallback(ownText(element));
  const around = element.parentElement?.closest('[lang]')?.getAttribute('lang') ?? own.lang;
  const wanted = says === undefined ? undefined : says ? fallback : own;
  if (wanted !== undefined && wanted.lang !== around) {
    element.setAttribute('lang', wanted.lang);
    // A direction would turn the layout of a block around: blocks have theirs from the style sheet.
    if (getComputedStyle(element).display === 'inline') element.setAttribute('dir', wanted.dir);
    marked.add(element);
  } else if (marked.delete(element)) {
    element.removeAttribute('lang');
    element.removeAttribute('dir');
  }
  for (const child of element.children) mark(child);
}

/** What an element says itself; else what it is called. */
function ownText(element: Element): string {
  const texts = [...element.childNodes].filter((node) => node instanceof Text);
  const text = texts.map(({ data }) => data).join(' ');
  if (/\p{L}{2}/u.test(text)) return text;
  const named = ['aria-label', 'alt', 'placeholder'].map((name) => element.getAttribute(name));
  return named.find((name) => name !== null) ?? '';
}

mark(document.body);
new MutationObserver((changes) => {
  const places = changes.map(({ target }) =>
    target instanceof Element ? target : target.parentElement,
  );
  for (const place of new Set(places)) if (place?.isConnected) mark(place);
}).observe(document.body, { childList: true, characterData: true, subtree: true });
