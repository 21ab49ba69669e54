/** Calls `onSeen` whenever the reader comes back to the page: to its tab, or to it in the history. */
export function whenSeenAgain(onSeen: () => void): void {
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') onSeen();
  });
  addEventListener('pageshow', (event) => {
    if (event.persisted) onSeen();
  });
}
