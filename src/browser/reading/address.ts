/**
 * The page's address names the position that the reader chose: `#…` with the id of its element.
 * Beside it the history keeps, as its state, which position the board shows: by scrolling that
 * soon becomes another, and on the way back the reader is to find the page as he left it.
 */
interface Place {
  readonly shown: string;
}

let timer: ReturnType<typeof setTimeout> | undefined;
let chosen: string | undefined;
let shown: string | undefined;

/** Keeps the address in step without filling the history; late, since browsers limit the rate. */
export function noteAddress(id: string): void {
  chosen = id;
  noteShown(id);
}

/** Keeps in the history what the board shows. */
export function noteShown(id: string): void {
  shown = id;
  clearTimeout(timer);
  timer = setTimeout(writeNoted, 200);
}

/** A jump within the text, which the browser's Back undoes. */
export function pushAddress(id: string): void {
  history.pushState({ shown: id } satisfies Place, '', hashOf(id));
}

/** Writes what was noted: before a jump, and before the page is left. */
export function writeNoted(): void {
  clearTimeout(timer);
  if (shown === undefined) return;
  history.replaceState({ shown } satisfies Place, '', chosen && hashOf(chosen));
  chosen = undefined;
  shown = undefined;
}

/** What the board showed when the reader was here before. */
export function shownBefore(): string | undefined {
  const place = history.state as Partial<Place> | null;
  return typeof place?.shown === 'string' ? place.shown : undefined;
}

export function hashOf(id: string): string {
  return `#${encodeURIComponent(id)}`;
}

addEventListener('pagehide', writeNoted);
