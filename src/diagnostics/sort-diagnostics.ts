import type { Diagnostic } from './diagnostic.ts';
import { compareNames } from './natural-order.ts';

/** By file, then by place, then by rule: the order in which an author works through them. */
export function sortDiagnostics(diagnostics: readonly Diagnostic[]): Diagnostic[] {
  return [...diagnostics].sort(
    (a, b) =>
      compareNames(a.place.file, b.place.file) ||
      a.place.start.offset - b.place.start.offset ||
      a.place.end.offset - b.place.end.offset ||
      compareText(a.rule, b.rule),
  );
}

// Not localeCompare: the order must be the same on every machine.
function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
