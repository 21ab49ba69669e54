/** The acts that ask something of the page. */
export const questions = ['click', 'focusin', 'keydown'] as const;
const acts = [...questions, 'pointermove', 'scroll', 'touchstart', 'wheel'] as const;

/** Runs a task once, before the reader's first act comes to the page: of any kind, or of these. */
export function beforeFirstAct(task: () => void, kinds: readonly string[] = acts): void {
  const run = (event: Event) => {
    if (isResting(event)) return;
    for (const kind of kinds) removeEventListener(kind, run, true);
    task();
  };
  for (const kind of kinds) addEventListener(kind, run, { capture: true, passive: true });
}

/** The browser sends such moves itself when a page comes to lie under a pointer. */
function isResting(event: Event): boolean {
  if (!(event instanceof PointerEvent) || event.type !== 'pointermove') return false;
  return event.movementX === 0 && event.movementY === 0;
}
