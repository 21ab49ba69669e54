import { align } from './align.ts';
import type { Part } from './chapter-parts.ts';
import { type OriginPart, originOf } from './origin.ts';

/** Of each part, by its index, what it was when the original was translated; nothing of what has come in since. */
export function partsBefore(
  was: readonly OriginPart[],
  now: readonly Part[],
): ReadonlyMap<number, OriginPart> {
  return known(was, now, ({ kind }) => kind);
}

/** Of each part of a translation, by its index, what it is a translation of, where its board is still that. */
export function translatedFrom(
  was: readonly OriginPart[],
  translated: readonly Part[],
): ReadonlyMap<number, OriginPart> {
  return known(was, translated, keyOf);
}

function known(
  was: readonly OriginPart[],
  parts: readonly Part[],
  kindOf: (part: OriginPart) => string,
): ReadonlyMap<number, OriginPart> {
  const pairs = align(was, parts.map(originOf), keyOf, kindOf);
  return new Map(
    pairs.flatMap(([x, y]) => {
      const part = x === undefined ? undefined : was[x];
      return part && y !== undefined ? [[y, part] as const] : [];
    }),
  );
}

function keyOf({ kind, board }: OriginPart): string {
  return `${kind} ${board}`;
}
