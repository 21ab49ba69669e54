import { isFenFault, parseFen } from '../../chess/fen.ts';
import type { FenFault, PieceKind } from '../../chess/index.ts';
import type { CourseTable } from '../../contract/course-table.ts';
import { parseMovetext } from '../../movetext/parse/parse-movetext.ts';
import { type FoundPlacement, findPlacement } from './find-placement.ts';
import { type FoundPosition, findPosition } from './find-position.ts';
import { type FollowedMoves, followMoves } from './follow-moves.ts';

/** What a text that was to name a position led to. */
export type PositionSearch =
  | { readonly kind: 'empty' }
  | ({ readonly kind: 'position' } & FoundPosition)
  /** Only the pieces were given. */
  | ({ readonly kind: 'placement' } & FoundPlacement)
  | ({ readonly kind: 'moves' } & FollowedMoves)
  | { readonly kind: 'fen-fault'; readonly text: string; readonly fault: FenFault }
  /** What stands at `start` is neither a move nor what may stand between moves. */
  | { readonly kind: 'unreadable'; readonly words: string; readonly start: number };

/** Looks up what a reader typed or pasted: a FEN, its first field, or moves from the start. */
export function searchPositions(
  table: CourseTable,
  text: string,
  letters: Readonly<Record<PieceKind, string>>,
): PositionSearch {
  const asked = text.trim();
  if (asked === '') return { kind: 'empty' };
  if (isFenLike(asked)) return searchFen(table, asked);
  const { tags, line, problems } = parseMovetext(asked);
  const fen = tags.find(({ name }) => name === 'FEN')?.value;
  const start = fen === undefined ? undefined : parseFen(fen);
  if (start !== undefined && isFenFault(start)) {
    return { kind: 'fen-fault', text: fen ?? '', fault: start };
  }
  const wrong = problems.find(
    ({ kind, span }) =>
      kind === 'text-unreadable' && span.start < (line.moves.at(-1)?.san.span.end ?? asked.length),
  );
  if (wrong !== undefined) {
    const { start, end } = wrong.span;
    return { kind: 'unreadable', words: asked.slice(start, end), start };
  }
  if (line.moves.length === 0) {
    if (start === undefined) return { kind: 'unreadable', words: asked, start: 0 };
    return { kind: 'position', ...findPosition(table, start.key) };
  }
  return { kind: 'moves', ...followMoves(table, line.moves, letters, start) };
}

/** Its first word is ranks and nothing else. */
function isFenLike(text: string): boolean {
  const [first = ''] = text.split(/\s/, 1);
  return /^\w+(?:\/\w*)+$/.test(first);
}

function searchFen(table: CourseTable, text: string): PositionSearch {
  const [placement = '', ...fields] = text.split(/\s+/);
  const result = parseFen(fields.length > 0 ? text : `${placement} w - -`);
  if (!isFenFault(result)) {
    return fields.length > 0
      ? { kind: 'position', ...findPosition(table, result.key) }
      : { kind: 'placement', ...findPlacement(table, placement) };
  }
  // With the pieces alone it may be the other side's move.
  if (fields.length === 0 && !isFenFault(parseFen(`${placement} b - -`))) {
    return { kind: 'placement', ...findPlacement(table, placement) };
  }
  return { kind: 'fen-fault', text, fault: result };
}
