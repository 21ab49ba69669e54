import { toString as plainText } from 'mdast-util-to-string';
import type { MoveNode } from '../model/index.ts';
import type { Edition } from './edition.ts';
import type { AdviceChange, JudgedChange } from './types.ts';

/** A change with the position in which it is, to which what grew or fell there belongs. */
export interface ChangeAt<Kind> {
  readonly key: string;
  readonly change: Kind;
}

/**
 * Positions of both editions in which another move is advised. Where the old edition had no move at
 * all a line was only made longer, and where the new one has none it was cut.
 */
export function findAdviceChanges(old: Edition, now: Edition): ChangeAt<AdviceChange>[] {
  return ourPositions(old, now).flatMap((key): ChangeAt<AdviceChange>[] => {
    const before = old.advice(key);
    const after = now.advice(key);
    if (before === after || old.graph[key]?.moves.length === 0) return [];
    const ref = now.refOf(key, after ?? before ?? '');
    if (ref === undefined) return [];
    const at = now.spotBefore(key, ref);
    const reason = reasonOf(now, key, before, after);
    const change: AdviceChange = {
      kind: 'advice',
      at,
      ...(before !== undefined && { old: old.move(key, before) }),
      ...(after !== undefined && { new: now.move(key, after) }),
      ...(reason !== undefined && { reason }),
      positions: 0,
    };
    return [{ key, change }];
  });
}

/** Moves of the course's side that are called bad now, or no longer, and are advised in neither. */
export function findJudgedChanges(old: Edition, now: Edition): ChangeAt<JudgedChange>[] {
  return ourPositions(old, now).flatMap((key) => {
    const advised = [old.advice(key), now.advice(key)];
    const moves = now.graph[key]?.moves ?? [];
    return moves.flatMap(({ san, at: [ref] }): ChangeAt<JudgedChange>[] => {
      const had = old.nodes(key, san).length > 0;
      const bad = now.isBad(key, san);
      if (!ref || !had || advised.includes(san) || old.isBad(key, san) === bad) return [];
      const at = now.spotBefore(key, ref);
      return [{ key, change: { kind: 'judged', at, move: now.move(key, san), bad } }];
    });
  });
}

function ourPositions(old: Edition, now: Edition): string[] {
  return Object.keys(now.graph).filter(
    (key) => old.graph[key] !== undefined && now.isOurs(key) && old.isOurs(key),
  );
}

function reasonOf(
  now: Edition,
  key: string,
  before: string | undefined,
  after: string | undefined,
): string | undefined {
  const was = before === undefined ? [] : now.nodes(key, before);
  const option = was
    .flatMap(({ statements }) => statements)
    .find(({ name, argument }) => name === 'option' && argument !== '');
  const comments = after === undefined ? was : now.nodes(key, after);
  return option?.argument ?? comments.map(commentOf).find((text) => text !== '');
}

/** What the comments right behind a move say, in plain words. */
function commentOf(node: MoveNode): string {
  const comments = node.after.flatMap((item) => (item.type === 'comment' ? [item.content] : []));
  return plainText(comments.flat()).replace(/\s+/g, ' ').trim();
}
