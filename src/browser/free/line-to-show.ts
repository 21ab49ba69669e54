/**
 * The moves of the reader's own that a note stands behind, from the page of notes to the chapter: by the address of
 * the place where they leave the text.
 */
const name = 'own-line';

interface LineToShow {
  readonly href: string;
  readonly moves: readonly string[];
}

export function keepLineFor(href: string, moves: readonly string[] | undefined): void {
  try {
    if (moves === undefined) sessionStorage.removeItem(name);
    else sessionStorage.setItem(name, JSON.stringify({ href, moves } satisfies LineToShow));
  } catch {
    // The place in the text is shown all the same.
  }
}

/** Whether moves wait to be shown at this address. */
export function hasLineFor(href: string): boolean {
  return read()?.href === href;
}

/** The moves that wait to be shown at this address, once: canonical SAN. */
export function takeLineFor(href: string): readonly string[] {
  const line = read();
  if (line?.href !== href) return [];
  keepLineFor(href, undefined);
  return line.moves;
}

function read(): LineToShow | undefined {
  try {
    const { href, moves } = JSON.parse(sessionStorage.getItem(name) ?? '{}') as Partial<LineToShow>;
    return href === undefined || !Array.isArray(moves) ? undefined : { href, moves };
  } catch {
    return undefined;
  }
}
