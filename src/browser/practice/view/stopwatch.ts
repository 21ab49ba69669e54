/** Who looks at a position longer than this does not know the move, but works it out. Seconds. */
const slowAfter = 40;

/** Tells whether a question has been looked at for long; time spent away from the page does not count. */
export function watch(): { start(): void; isSlow(): boolean } {
  // Not the wall clock, which may be set while one thinks.
  let started = performance.now();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') started = performance.now();
  });
  return {
    start: () => {
      started = performance.now();
    },
    isSlow: () => performance.now() - started > slowAfter * 1000,
  };
}
