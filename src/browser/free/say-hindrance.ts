import { type Hindrance, hindranceOf } from '../../chess/hindrance.ts';
import { isMate, isStalemate } from '../../chess/rules.ts';
import type { Position } from '../../chess/types.ts';
import { fill } from '../../contract/sentence.ts';
import type { ChapterWords, FreeWords } from '../../contract/words.ts';
import type { BoardRefusal } from '../board/board-state.ts';

/** Why a move cannot be played, in a sentence of the page's language. */
export function sayHindrance(
  position: Position,
  { piece, from, to }: BoardRefusal,
  words: FreeWords,
  page: ChapterWords,
): string {
  if (isMate(position) || isStalemate(position)) return words.over;
  if (to === undefined) {
    return page.notYours[piece.color === 'white' ? 'black' : 'white'];
  }
  const found = hindranceOf(position, from, to) ?? ({ kind: 'not-its-way' } satisfies Hindrance);
  const parts: Record<string, string> = { piece: page.pieces[piece.kind], from, to };
  if ('by' in found) {
    parts.blocker = page.pieces[found.by.piece.kind];
    parts.square = found.by.square;
  }
  if ('over' in found) parts.over = found.over;
  return fill(words[found.kind], parts);
}
