import {
  numberSign,
  type PiecesLanguage,
  type PlayedMove,
  type Position,
  playSan,
} from '../chess/index.ts';
import { glyphSign, isAssessment, isMoveSuffix } from '../movetext/index.ts';
import { inLettersOf } from '../read/index.ts';
import { EditRefusedError, type NewMove } from './types.ts';
import { wordsText } from './words.ts';

/**
 * Moves as movetext: `7. Bg2 {…} 7... Be7 8. O-O`.
 * @param from the position that the first is played in.
 * @param style.gap what stands between a number and its move: a space, or nothing.
 * @param style.pieces the language of its letters; English unless given.
 * @throws EditRefusedError for a move that cannot be played.
 */
export function movesText(
  from: Position,
  moves: readonly NewMove[],
  style: { readonly gap: string; readonly pieces?: PiecesLanguage | undefined },
): string {
  const { gap, pieces } = style;
  const parts: string[] = [];
  let position = from;
  // A move by Black has its number where no move stands right before it.
  let interrupted = true;
  for (const move of moves) {
    const played = playIn(position, move.san);
    const numbered = interrupted || played.color === 'white';
    const san = inLettersOf(pieces, played.san);
    parts.push(`${numbered ? `${numberSign(played)}${gap}` : ''}${san}${glyphsText(move)}`);
    const words = wordsText(move);
    if (words !== '') parts.push(`{${words}}`);
    const variations = move.variations ?? [];
    for (const each of variations) parts.push(`( ${movesText(position, each, style)} )`);
    interrupted = words !== '' || variations.length > 0;
    position = played.after;
  }
  return parts.join(' ');
}

/** @throws EditRefusedError for a move that cannot be played. */
export function playIn(position: Position, san: string): PlayedMove {
  const played = playSan(position, san);
  if (played !== undefined) return played;
  throw new EditRefusedError(`\`${san}\` is no legal move here`, 'play one that is');
}

/** Glyphs behind a move: `?!`, ` ⩲`, ` $140`. */
function glyphsText({ glyphs = [] }: Pick<NewMove, 'glyphs'>): string {
  const suffixes = glyphs.filter(isMoveSuffix);
  const others = glyphs.filter((nag) => !isMoveSuffix(nag));
  return [...suffixes.map(glyphText), ...others.map((nag) => ` ${glyphText(nag)}`)].join('');
}

/** The sign of a glyph where that is read as this glyph again, else its number: `±`, `$140`. */
export function glyphText(nag: number): string {
  const sign = glyphSign(nag);
  if (sign === undefined || !(isMoveSuffix(nag) || isAssessment(nag))) return `$${nag}`;
  // One sign serves several numbers, and is read as the first of them.
  return [11, 12, 20, 21].includes(nag) ? `$${nag}` : sign;
}
