/** The page's address names the position on the board: `#…` with the id of its element. */

let waiting: { readonly id: string; readonly timer: ReturnType<typeof setTimeout> } | undefined;

/** Keeps the address in step without filling the history; late, since browsers limit the rate. */
export function noteAddress(id: string): void {
  clearTimeout(waiting?.timer);
  waiting = { id, timer: setTimeout(writeNoted, 200) };
}

/** A jump within the text, which the browser's Back undoes. */
export function pushAddress(id: string): void {
  writeNoted();
  history.pushState(null, '', hashOf(id));
}

export function hashOf(id: string): string {
  return `#${encodeURIComponent(id)}`;
}

/** Before the page is left, since Back returns to the address that was noted. */
addEventListener('pagehide', writeNoted);

function writeNoted(): void {
  if (waiting === undefined) return;
  clearTimeout(waiting.timer);
  history.replaceState(null, '', hashOf(waiting.id));
  waiting = undefined;
}
