import type { NameInCourse } from '../model/index.ts';

/**
 * What other chapters' play depends on in a name: its position and how it is reached, but neither line nor column. Empty
 * for an unknown name.
 */
export function printName(name: NameInCourse | undefined): string {
  if (name === undefined) return '';
  const { chapter, ref, position, move, castled, from } = name;
  return JSON.stringify([
    chapter,
    ref && [ref.chapter, ref.block, ref.node],
    position?.fen,
    move && move.from + move.to,
    castled.map(({ san, color }) => color + san),
    from,
  ]);
}

/** Whether following names to the names that their blocks start from leads in a circle. */
export function hasCircle(first: ReadonlyMap<string, NameInCourse>): boolean {
  const sound = new Set<string>();
  for (const start of first.keys()) {
    const way = new Set<string>();
    let name: string | undefined = start;
    while (name !== undefined && !sound.has(name)) {
      if (way.has(name)) return true;
      way.add(name);
      name = first.get(name)?.from;
    }
    for (const passed of way) sound.add(passed);
  }
  return false;
}
