import type { WriteHistory } from '../../../contract/desk-write.ts';
import { keptText } from '../../kept-text.ts';

/** Survives a reload of the page, in this tab. */
const name = `writing:${location.pathname}`;

export interface Kept<Said> {
  readonly said: readonly (readonly [string, Said])[];
  readonly message?: string | undefined;
  readonly isOpen?: boolean | undefined;
  readonly history?: WriteHistory | undefined;
}

export function keep<Said>(kept: Kept<Said>): void {
  try {
    sessionStorage.setItem(name, JSON.stringify(kept));
  } catch {
    // Then it is lost with the page.
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
