import type { LegalMove } from './rules.ts';
import type { Spelling } from './spelling.ts';
import type { MoveFault, Position } from './types.ts';

export interface Unplayable {
  readonly position: Position;
  readonly written: string;
  readonly spelling: Spelling | undefined;
  readonly legal: readonly LegalMove[];
  readonly fitting: readonly LegalMove[];
}

export function explainFault({ spelling, fitting, written }: Unplayable): MoveFault {
  if (fitting.length > 1)
    return {
      kind: 'ambiguous',
      reason: 'more than one piece can go there',
      meant: fitting.slice(0, 4).map((m) => m.san),
    };
  if (spelling === undefined)
    return { kind: 'unreadable', reason: `${written} is no move`, meant: [] };
  return { kind: 'illegal', reason: `no such move can be played`, meant: [] };
}
