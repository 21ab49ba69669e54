/** The acts that ask something of the page. */
export const questions = ['click', 'focusin', 'keydown'] as const;
const acts = [...questions, 'pointermove', 'scroll', 'touchstart', 'wheel'] as const;

/** Runs a task once, before the reader's first act comes to the page: of any kind, or of these. */
export function beforeFirstAct(task: () => void, kinds: readonly string[] = acts): void {
  const run = () => {
    for (const kind of kinds) removeEventListener(kind, run, true);
    task();
  };
  for (const kind of kinds) addEventListener(kind, run, { capture: true, passive: true });
}
