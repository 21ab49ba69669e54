import { align } from './align.ts';
import type { TranslationUnit } from './chapter-units.ts';
import { type OriginUnit, originOf } from './origin.ts';

/** Of each unit, by its index, what it was when the original was translated; nothing of what has come in since. */
export function unitsBefore(
  was: readonly OriginUnit[],
  now: readonly TranslationUnit[],
): ReadonlyMap<number, OriginUnit> {
  return known(was, now, ({ kind }) => kind);
}

/** Of each unit of a translation, by its index, what it is a translation of, where its board is still that. */
export function translatedFrom(
  was: readonly OriginUnit[],
  translated: readonly TranslationUnit[],
): ReadonlyMap<number, OriginUnit> {
  return known(was, translated, keyOf);
}

function known(
  was: readonly OriginUnit[],
  units: readonly TranslationUnit[],
  kindOf: (unit: OriginUnit) => string,
): ReadonlyMap<number, OriginUnit> {
  const pairs = align(was, units.map(originOf), keyOf, kindOf);
  return new Map(
    pairs.flatMap(([x, y]) => {
      const unit = x === undefined ? undefined : was[x];
      return unit && y !== undefined ? [[y, unit] as const] : [];
    }),
  );
}

function keyOf({ kind, board }: OriginUnit): string {
  return `${kind} ${board}`;
}
