import { numberedSan } from '../chess/letters.ts';
import type { PieceKind } from '../chess/types.ts';
import { fill } from '../contract/sentence.ts';
import type { BoardWords, ChapterWords, PieceWords } from '../contract/words.ts';
import type { BoardPicture } from '../draw/picture.ts';
import { readPlacement } from '../draw/placement.ts';
import type { Spot } from './spots.ts';

/** `7...Be7`: a move with its number, as the page prints it. */
export function numbered({ move }: Spot): string {
  return move === undefined ? '' : numberedSan(move);
}

/** Another place of the position: `after 5.e3 in “White has other ideas”`. */
export function otherPlace(href: string, move: string, words: ChapterWords): string {
  const position = `${words.after} ${move}`;
  const chapter = words.chapters[href.replace(/#.*/, '')];
  return chapter === undefined ? position : fill(words.inChapter, { position, chapter });
}

/** The line under the board: `after 7...Be7`. */
export function caption(shown: Spot, words: BoardWords): string {
  const spot = shown.home ?? shown;
  const number = spot.element.querySelector('.diagram-number')?.textContent;
  if (number) return number;
  if (spot.move !== undefined) return `${words.after} ${numbered(spot)}`;
  return spot.element.querySelector(':scope > .from > a')?.textContent ?? words.start;
}

/** A move as it is spoken: `Black: bishop to e7, check`. */
export function spoken({ move }: Pick<Spot, 'move'>, words: BoardWords): string {
  if (move === undefined) return words.start;
  const kind = (letter: string): PieceKind =>
    pieceKinds.find((name) => words.letters[name] === letter) ?? 'pawn';
  const parts: string[] = [];
  if (/^O-O-O/.test(move.san)) parts.push(words.castlesLong);
  else if (/^O-O/.test(move.san)) parts.push(words.castlesShort);
  else {
    const [, letter = ''] = /^(\p{Lu}?)/u.exec(move.san) ?? [];
    const how = move.san.includes('x') ? words.takes : words.to;
    parts.push(`${words.pieces[kind(letter)]} ${how} ${move.to}`);
    const [, promoted] = /=(\p{Lu})/u.exec(move.san) ?? [];
    if (promoted !== undefined) parts.push(`${words.promotes} ${words.pieces[kind(promoted)]}`);
  }
  if (move.san.endsWith('+')) parts.push(words.check);
  if (move.san.endsWith('#')) parts.push(words.mate);
  return `${words[move.color]}: ${parts.join(', ')}`;
}

/** What a board shows beside its pieces: whose move it is, marked squares, arrows. */
export function describeMore(
  { turn, marks = [], arrows = [] }: Pick<BoardPicture, 'turn' | 'marks' | 'arrows'>,
  words: BoardWords,
): string {
  const drawn = arrows.map(({ meaning, from, to }) => `${words.arrows[meaning]}: ${from}-${to}`);
  const marked = marks.length === 0 ? [] : [`${words.marked}: ${marks.join(', ')}`];
  const side = turn === undefined ? [] : [words.toMove[turn]];
  return [...side, ...marked, ...drawn].map((part) => `${part}.`).join(' ');
}

const pieceKinds = ['king', 'queen', 'rook', 'bishop', 'knight', 'pawn'] as const;

/** The pieces on the board, side by side: `White: king g1, queen d1, …. Black: …`. */
export function describe(
  placement: string,
  words: Pick<PieceWords, 'pieces' | 'white' | 'black'>,
): string {
  const pieces = readPlacement(placement);
  const sides = (['white', 'black'] as const).map((color) => {
    const named = pieceKinds.flatMap((kind) => {
      const at = pieces
        .filter(({ piece }) => piece.color === color && piece.kind === kind)
        .map(({ square }) => square);
      return at.length === 0 ? [] : [`${words.pieces[kind]} ${at.sort().join(' ')}`];
    });
    return `${words[color]}: ${named.join(', ')}.`;
  });
  return sides.join(' ');
}
