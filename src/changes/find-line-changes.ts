import { blockAt, chapterAt, type NodeRef } from '../model/index.ts';
import type { Edition } from './edition.ts';
import type { Growth } from './find-growth.ts';
import type { DroppedChange, LineChange, ReplyChange } from './types.ts';

/** What the new edition tells and the old one did not. */
export function describeGrowth(
  { from, ref, positions }: Growth,
  old: Edition,
  now: Edition,
): ReplyChange | LineChange {
  if (from === undefined) {
    const block = blockAt(now.course, ref);
    const { move } = block?.nodes[1] ?? {};
    const first = move && { san: move.san, number: move.number, color: move.color };
    return { kind: 'start', at: now.place(ref), ...(first && { move: first }), positions };
  }
  const { key, san } = from;
  const at = now.placeBefore(key, ref);
  const move = now.move(key, san);
  if (old.graph[key]?.moves.length === 0) return { kind: 'extended', at, move, positions };
  if (now.isOurs(key)) return { kind: 'option', at, move, positions };
  const to = now.graph[key]?.moves.find((next) => next.san === san)?.to ?? '';
  const answer = now.advice(to);
  const told = answer === undefined ? {} : { answer: now.move(to, answer) };
  return { kind: 'reply', at, move, ...told, positions };
}

/** What the old edition told and the new one does not. */
export function describeFall(
  { from, ref, positions }: Growth,
  old: Edition,
  now: Edition,
): DroppedChange {
  if (from === undefined) return { kind: 'dropped', at: old.place(ref), positions };
  const stands = now.placeAt(from.key) ?? old.place(ref);
  const home = now.course.chapters.find(({ id }) => id === chapterOf(old, ref))?.id;
  const at = { ...stands, chapter: home ?? stands.chapter };
  return { kind: 'dropped', at, move: old.move(from.key, from.san), positions };
}

/** The chapter in which a growth stands, by its id. */
export function chapterOf(edition: Edition, ref: NodeRef): string {
  return chapterAt(edition.course, ref)?.id ?? '';
}
