/** Where the reader is in the page, to be found again when the text has changed. */
export interface HeldPlace {
  restore(): void;
}

/** What the reader asked for, before all else. */
const read = 'article :focus, article [aria-current]';
const readable =
  'article p, article li, article figure, article section, article h2, article h3, h1';
/** In milliseconds: what scripts make of an exercise that was replaced is there by then. */
const longest = 3000;

/** Notes what stands where in the window, and what has the focus. */
export function holdPlace(): HeldPlace {
  const inSight = [...document.querySelectorAll(read), ...document.querySelectorAll(readable)]
    .map((element) => ({ element, top: element.getBoundingClientRect().top }))
    // What begins above the window may grow or shrink there.
    .filter(({ top }) => top >= 0 && top < innerHeight);
  const focus = holdFocus();
  const root = document.documentElement;
  // The browser's own way to hold the place would add to this one.
  root.style.overflowAnchor = 'none';
  return {
    restore() {
      const there = inSight.find(({ element }) => element.isConnected);
      const moved = there ? there.element.getBoundingClientRect().top - there.top : 0;
      if (Math.abs(moved) >= 1 && scrollY > 0) scrollBy({ top: moved, behavior: 'instant' });
      requestAnimationFrame(() => root.style.removeProperty('overflow-anchor'));
      focus();
    },
  };
}

/** @returns what brings the focus back, if its element has been replaced. */
function holdFocus(): () => void {
  const focused = document.activeElement;
  if (focused === null || focused === document.body) return () => {};
  const find = finderOf(focused);
  return () => {
    if (focused.isConnected) return;
    const focus = () => {
      const now = find();
      if (now === undefined) return false;
      now.focus({ preventScroll: true });
      return document.activeElement === now;
    };
    if (focus()) return;
    const watching = new MutationObserver(() => {
      if (document.activeElement !== document.body || focus()) watching.disconnect();
    });
    watching.observe(document.body, { childList: true, subtree: true });
    setTimeout(() => watching.disconnect(), longest);
  };
}

/** Finds an element again in a text that has been replaced: by its id, else by its square or place in what has one. */
function finderOf(element: Element): () => HTMLElement | undefined {
  const { id } = element;
  if (id !== '') return () => document.getElementById(id) ?? undefined;
  const around = element.closest('[id]:not(main)');
  if (around === null) return () => undefined;
  const like = likeness(element);
  const index = [...around.querySelectorAll(like)].indexOf(element);
  return () => {
    const now = document.getElementById(around.id)?.querySelectorAll<HTMLElement>(like)[index];
    return now;
  };
}

function likeness(element: Element): string {
  const square = element.getAttribute('data-square');
  if (square !== null) return `${element.tagName}[data-square="${CSS.escape(square)}"]`;
  const [name] = element.classList;
  return name === undefined ? element.tagName : `${element.tagName}.${CSS.escape(name)}`;
}
