import type { CourseIndex } from '../view/index.ts';

/**
 * The keys of the positions from which the course's moves lead to the one that its setting `begins` names, which is
 * not among them. The same as `positionsBefore` of the model, of summaries.
 */
export function positionsBefore(
  { names, positions }: CourseIndex,
  begins: string | undefined,
): ReadonlySet<string> {
  const before = new Set<string>();
  const start = begins === undefined ? undefined : names.get(begins)?.position?.key;
  if (start === undefined) return before;
  const open = [start];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    for (const { before: key } of positions.get(next)?.at ?? []) {
      if (key === undefined || before.has(key) || key === start) continue;
      before.add(key);
      open.push(key);
    }
  }
  return before;
}
