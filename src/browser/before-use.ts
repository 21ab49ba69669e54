import { beforeFirstAct, questions } from './first-act.ts';
import { whenIdle } from './when-idle.ts';

/**
 * Runs a task once: when the page is idle, or before the reader's first key or touch, which then finds it done.
 */
export function beforeUse(task: () => void): void {
  let waits = true;
  const run = () => {
    if (waits) task();
    waits = false;
  };
  beforeFirstAct(run, questions);
  whenIdle(run);
}
