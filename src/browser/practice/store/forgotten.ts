/**
 * When the reader last had a course forgotten: what was learnt before, under whatever name, is not
 * taken over again. Beside the database, since that is what is emptied.
 */

/** Ms since 1970; -1 for never. */
export function forgottenAt(course: string): number {
  try {
    return Number(localStorage.getItem(name(course)) ?? -1);
  } catch {
    // Where this is refused there are no other databases either.
    return -1;
  }
}

/** @throws where the browser keeps nothing. */
export function noteForgotten(course: string, at: number): void {
  localStorage.setItem(name(course), String(at));
}

function name(course: string): string {
  return `practice:${course}:forgotten`;
}
