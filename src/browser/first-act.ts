const acts = ['click', 'focusin', 'keydown', 'pointermove', 'scroll', 'touchstart', 'wheel'];

/** Runs a task once, before the reader's first act comes to the page. */
export function beforeFirstAct(task: () => void): void {
  const run = () => {
    for (const act of acts) removeEventListener(act, run, true);
    task();
  };
  for (const act of acts) addEventListener(act, run, { capture: true, passive: true });
}
