import { nodeAt } from '../model/index.ts';
import type { Edition } from './edition.ts';
import type { AdviceChange, ChangeBoard, JudgedChange } from './types.ts';

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
    const at = now.placeBefore(key, ref);
    const reason = reasonOf(now, key, before);
    const isMistake = before !== undefined && now.isBad(key, before);
    const change: AdviceChange = {
      kind: 'advice',
      at,
      ...(before !== undefined && { old: old.move(key, before) }),
      ...(after !== undefined && { new: now.move(key, after) }),
      ...(isMistake && { mistake: true }),
      ...(reason !== undefined && { reason }),
      board: boardOf(now, key, after),
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
      const at = now.placeBefore(key, ref);
      const reason = bad ? now.comment(key, san) : '';
      const change: JudgedChange = {
        kind: 'judged',
        at,
        move: now.move(key, san),
        bad,
        ...(reason !== '' && { reason }),
        board: boardOf(now, key, now.advice(key)),
      };
      return [{ key, change }];
    });
  });
}

function ourPositions(old: Edition, now: Edition): string[] {
  return Object.keys(now.graph).filter(
    (key) => old.graph[key] !== undefined && now.isOurs(key) && old.isOurs(key),
  );
}

/** Why the old move is advised no more, where its author says so. */
function reasonOf(now: Edition, key: string, before: string | undefined): string | undefined {
  if (before === undefined) return undefined;
  const option = now
    .nodes(key, before)
    .flatMap(({ statements }) => statements)
    .find(({ name, argument }) => name === 'option' && argument !== '');
  if (option) return option.argument;
  return now.isBad(key, before) ? now.comment(key, before) || undefined : undefined;
}

function boardOf(
  { course, graph, arrow }: Edition,
  key: string,
  advice: string | undefined,
): ChangeBoard {
  const [ref] = graph[key]?.at ?? [];
  const advised = advice === undefined ? undefined : arrow(key, advice);
  return {
    fen: (ref && nodeAt(course, ref)?.position?.fen) ?? '',
    ...(advised !== undefined && { advised }),
  };
}
