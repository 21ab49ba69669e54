import { dataOf } from '../../contract/attributes.ts';
import { loadScript } from '../load-script.ts';
import { beginExercise } from './begin.ts';

/** How far from the window an exercise is made live, in heights of the window. */
const near = '150%';

/** What shows that the reader is at an exercise, however he came there. */
const acts = ['pointerover', 'pointerdown', 'focusin', 'click'] as const;

/**
 * Makes the exercises of the page live as the reader comes near them, by a script that is loaded for the first one.
 * Clicks on a board until then are repeated. If the script cannot be loaded, the answers stay folded in the text.
 */
export function awaitExercises(root: HTMLElement): void {
  const { solver } = dataOf('page', root.closest<HTMLElement>('[data-solver]') ?? root);
  const sections = [...root.querySelectorAll<HTMLElement>('.exercise')];
  if (solver === undefined || sections.length === 0) return;
  let loaded: Promise<void> | undefined;
  const begin = async (section: HTMLElement) => {
    loaded ??= loadScript(solver);
    try {
      await loaded;
    } catch {
      loaded = undefined;
      return;
    }
    beginExercise(section);
  };
  const observer = new IntersectionObserver(
    (entries) => {
      for (const { target, isIntersecting } of entries) {
        if (!isIntersecting) continue;
        observer.unobserve(target);
        if (target instanceof HTMLElement) void begin(target);
      }
    },
    { rootMargin: `${near} 0px` },
  );
  for (const section of sections) {
    observer.observe(section);
    keepClicks(section, () => begin(section));
  }
}

/** Calls for a section at the reader's first act in it, and makes the clicks that its board had meanwhile. */
function keepClicks(section: HTMLElement, begin: () => Promise<void>): void {
  const clicks: { readonly x: number; readonly y: number }[] = [];
  let asked = false;
  const listener = (event: Event) => {
    const svg = section.querySelector('svg.board');
    if (section.querySelector('.squares') !== null) return forget();
    if (
      event.type === 'click' &&
      event instanceof MouseEvent &&
      svg?.contains(event.target as Node)
    ) {
      const { left, top, width, height } = svg.getBoundingClientRect();
      clicks.push({ x: (event.clientX - left) / width, y: (event.clientY - top) / height });
    }
    if (asked) return;
    asked = true;
    void begin().then(() => {
      asked = false;
      const squares = [...section.querySelectorAll<HTMLElement>('.squares button')];
      if (svg === null || squares.length === 0) return;
      forget();
      const area = svg.getBoundingClientRect();
      for (const { x, y } of clicks) {
        squareAt(squares, area.left + x * area.width, area.top + y * area.height)?.click();
      }
    });
  };
  const forget = () => {
    for (const act of acts) section.removeEventListener(act, listener, true);
  };
  for (const act of acts) section.addEventListener(act, listener, { capture: true, passive: true });
}

function squareAt(squares: readonly HTMLElement[], x: number, y: number): HTMLElement | undefined {
  return squares.find((square) => {
    const { left, right, top, bottom } = square.getBoundingClientRect();
    return left <= x && x < right && top <= y && y < bottom;
  });
}
