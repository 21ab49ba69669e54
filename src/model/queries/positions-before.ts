import type { Course } from '../types.ts';
import { nodeAt } from './node-at.ts';
import { outlinedNodeAt } from './outline.ts';

/**
 * The keys of the positions that come before the course's subject: those from which its moves lead to the position
 * that `begins` names, without that position.
 */
export function positionsBefore(course: Course): ReadonlySet<string> {
  const before = new Set<string>();
  const { begins } = course.settings;
  const label = begins === undefined ? undefined : course.labels[begins];
  const start =
    label && (outlinedNodeAt(course, label.ref)?.key ?? nodeAt(course, label.ref)?.position?.key);
  if (start === undefined) return before;
  const into = new Map<string, string[]>();
  for (const { key, moves } of Object.values(course.graph)) {
    for (const { to } of moves) into.set(to, [...(into.get(to) ?? []), key]);
  }
  const open = [start];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    for (const key of into.get(next) ?? []) {
      if (before.has(key) || key === start) continue;
      before.add(key);
      open.push(key);
    }
  }
  return before;
}
