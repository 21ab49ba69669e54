import { numberedSan, sanIn } from '../../chess/letters.ts';
import type { CourseTable, TableMove, TablePlace } from '../../contract/course-table.ts';
import { fill } from '../../contract/sentence.ts';
import type { CompareWords } from '../../contract/words.ts';
import { linesOf } from '../../lookup/games/lines-of.ts';
import type { GameExit, GameMove } from '../../lookup/games/types.ts';
import { placeHref } from '../../lookup/place-href.ts';
import { make } from '../element.ts';

/** Positions and moves of the course, in words and as links to where they stand. */
export interface Places {
  /** `after 7...Be7 in “The isolated pawn”`, as a link. */
  readonly position: (exit: GameExit) => HTMLElement;
  readonly inWords: (exit: GameExit) => string;
  /** `after 7...Be7`, as a link: where the chapter has been named. */
  readonly positionHere: (exit: GameExit) => HTMLElement;
  /** `1.d4 d5 2.c4`: the way there; empty for a position that only a set-up leads to. */
  readonly line: (position: number) => string;
  /** A move of the course from the last known position of a game, as a link. */
  readonly move: (exit: GameExit, move: TableMove) => HTMLElement;
  /** A move with its number, such as `7...Be7`. */
  readonly numbered: (move: GameMove) => string;
  /** What a move of the course, or of a game, is called at the last known position. */
  readonly there: (exit: GameExit, san: string) => string;
}

export function placesOf(table: CourseTable, words: CompareWords): Places {
  const lineOf = linesOf(table);
  const local = (san: string) => sanIn(words.letters, san);
  const numbered = (move: GameMove) => numberedSan(move, words.letters);
  const here = (exit: GameExit): string => {
    // The course's own way there names the position alike for all games; else the game's does.
    const last = lineOf(exit.position)?.at(-1) ?? exit.last;
    return last === undefined ? words.startPosition : fill(words.after, { move: numbered(last) });
  };
  const inWords = (exit: GameExit): string => {
    const [chapter] = table.positions[exit.position]?.at[0] ?? [];
    const title = table.chapters[chapter ?? -1]?.title;
    if (title === undefined) return here(exit);
    return fill(words.inChapter, { position: here(exit), chapter: title });
  };
  const link = (place: TablePlace | undefined, position: number, text: string): HTMLElement => {
    if (place === undefined) return make('span', '', text);
    const element = make('a', '', text);
    element.href = placeHref(table, position, place);
    return element;
  };
  const there = (exit: GameExit, san: string): string => {
    const before = lineOf(exit.position);
    const next = exit.next ?? followingOf(before?.at(-1) ?? exit.last);
    return next === undefined ? local(san) : numbered({ ...next, san });
  };
  return {
    numbered,
    inWords,
    there,
    position: (exit) => link(table.positions[exit.position]?.at[0], exit.position, inWords(exit)),
    positionHere: (exit) => link(table.positions[exit.position]?.at[0], exit.position, here(exit)),
    line: (position) =>
      (lineOf(position) ?? [])
        .map((move) => (move.color === 'white' ? numbered(move) : local(move.san)))
        .join(' '),
    move: (exit, move) => link(move.at[0], move.to, there(exit, move.san)),
  };
}

function followingOf(move: GameMove | undefined): GameMove | undefined {
  if (move === undefined) return undefined;
  return move.color === 'white'
    ? { ...move, color: 'black' }
    : { ...move, color: 'white', number: move.number + 1 };
}
