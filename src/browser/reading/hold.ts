/** What the reader asked for: while it holds, the board does not follow the text. */
export interface Hold {
  /** `element` is what was touched, stepped to, or addressed. */
  take(element: Element): void;
  release(): void;
  /** `covered` says how much of the window's top the board covers. */
  holds(covered: number): boolean;
}

const acts = ['keydown', 'pointerdown', 'pointermove', 'touchmove', 'wheel'] as const;

/**
 * A hold lasts while its element is in sight. Text also moves without the reader, as when a font
 * arrives or the page scrolls to its address: so until the reader's next act it lasts in any case.
 */
export function createHold(): Hold {
  let held: Element | undefined;
  let untouched = false;
  for (const act of acts) {
    addEventListener(
      act,
      () => {
        untouched = false;
      },
      { capture: true, passive: true },
    );
  }
  return {
    take(element) {
      held = element;
      untouched = true;
    },
    release() {
      held = undefined;
    },
    holds: (covered) => held !== undefined && (untouched || isInSight(held, covered)),
  };
}

function isInSight(element: Element, covered: number): boolean {
  const { top, bottom } = element.getBoundingClientRect();
  return bottom > covered && top < innerHeight;
}
