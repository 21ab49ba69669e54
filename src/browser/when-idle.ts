/**
 * Runs a task once the page has been shown and nothing waits for the reader's hand; not at once,
 * so that no long task keeps a slow phone from scrolling. Safari has no idle callbacks.
 */
export function whenIdle(task: () => void): void {
  if (typeof requestIdleCallback === 'function') requestIdleCallback(task, { timeout: 1500 });
  else setTimeout(task, 50);
}
