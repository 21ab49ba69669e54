import type { WriteHistory } from '../../../contract/desk-write.ts';
import { keptText } from '../../kept-text.ts';

/** What outlives the page when it is loaded anew: in this tab, until it is closed. */
const name = `writing:${location.pathname}`;

export interface Kept<Said> {
  /** By what each is said of. */
  readonly said: readonly (readonly [string, Said])[];
  /** What the page tells when it is there again. */
  readonly message?: string | undefined;
  readonly isOpen?: boolean | undefined;
  readonly history?: WriteHistory | undefined;
}

export function keep<Said>(kept: Kept<Said>): void {
  try {
    sessionStorage.setItem(name, JSON.stringify(kept));
  } catch {
    // Then it is lost with the page, as anything that is not written.
  }
}

export function takeKept<Said>(): Kept<Said> {
  const none: Kept<Said> = { said: [] };
  try {
    return JSON.parse(keptText(name, () => sessionStorage) ?? 'null') ?? none;
  } catch {
    return none;
  }
}
