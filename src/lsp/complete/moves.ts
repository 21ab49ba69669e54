import {
  fullMoveNumber,
  listMoves,
  numberSign,
  type Position,
  sideToMove,
} from '../../chess/index.ts';
import { adviceOf, type Course } from '../../model/index.ts';
import { inLettersOf } from '../../read/index.ts';
import { CompletionItemKind, type Offer, type Offers } from './item.ts';

/** The word of a move that is being typed, without its number. */
export function moveWordStart(text: string, offset: number): number {
  return (
    offset -
    (/[A-Za-z][\w+#=-]*$/.exec(text.slice(Math.max(0, offset - 12), offset))?.[0].length ?? 0)
  );
}

/**
 * The legal moves of a position: the course's advice first, then what else it plays there.
 * @param before what stands in front of the move: it may have its number already.
 */
export function moveOffers(
  position: Position,
  course: Course,
  { start, before }: { readonly start: number; readonly before: string },
): Offers {
  const advised = new Set(
    adviceOf(course)
      .get(position.key)
      ?.map(({ san }) => san),
  );
  const played = new Set(course.graph[position.key]?.moves.map(({ san }) => san));
  const number = numberFor(position, before);
  const offers = listMoves(position).map(({ san }): Offer => {
    const isAdvice = advised.has(san);
    const isPlayed = played.has(san);
    return {
      label: inLettersOf(course.settings.pieces, san),
      kind: CompletionItemKind.Function,
      text: number + inLettersOf(course.settings.pieces, san),
      detail: isAdvice ? 'the course’s advice' : isPlayed ? 'in the course' : undefined,
      rank: isAdvice ? 0 : isPlayed ? 1 : 5,
    };
  });
  return { start, offers };
}

/** The number that a move needs in front of it: White's always, Black's where something has come between. */
function numberFor(position: Position, before: string): string {
  if (/(?:^|[\s({})])\d+\s*\.*\s*$/.test(before)) return '';
  const color = sideToMove(position);
  if (color === 'black' && /[\w+#!?]\s*$/.test(before)) return '';
  const number = fullMoveNumber(position);
  const sign = `${numberSign({ number, color })} `;
  return before === '' || /[\s(]$/.test(before) ? sign : ` ${sign}`;
}
