import type { Color, Square } from '../../chess/types.ts';
import { dataOf, type LineKind } from '../../contract/attributes.ts';
import { readPositionAddress } from '../../contract/position-address.ts';
import type { ChapterWords } from '../../contract/words.ts';
import { wordsOf } from '../board/board-words.ts';
import type { CourseBoard } from '../board/course-board.ts';
import { readSpots, type Spot } from '../spots.ts';
import type { LineMove, Lines } from './walk-answer.ts';

export interface Exercise {
  readonly words: ChapterWords;
  readonly board: CourseBoard;
  /** The answer, folded: without scripts the reader looks there. */
  readonly fold: HTMLDetailsElement;
  readonly hints: readonly HTMLDetailsElement[];
  /** `Position.key` */
  readonly key: string;
  readonly view: Color;
  readonly turn: Color;
  /** The move before the question. */
  readonly lastMove: { readonly from: Square; readonly to: Square } | undefined;
  readonly lines: readonly Line[];
  /** What is walked along. */
  readonly moves: Lines<SpotMove>;
  /** The positions of its lines by their elements. */
  readonly spots: ReadonlyMap<Element, Spot>;
}

export interface Line {
  readonly kind: LineKind;
  readonly element: HTMLElement;
  readonly start: Spot;
}

/** A move of a line, and the position that it leads to. */
export interface SpotMove extends LineMove {
  readonly spot: Spot;
  readonly children: readonly SpotMove[];
}

/** Reads an exercise from its section; nothing where it has no board or no answer. */
export function readExercise(section: HTMLElement): Exercise | undefined {
  // The class of the page's own script: this one is loaded beside it and knows its type only.
  const board = section.querySelector<CourseBoard>('course-board:defined');
  const fold = section.querySelector<HTMLDetailsElement>('.exercise-help > .answer');
  if (board === null || fold === null) return undefined;
  const { p: key = '', last = '', view, turn } = dataOf('exercise', section);
  const spots = readSpots(section, '.moves');
  const lines = readLines(fold, spots);
  const movesOf = (kind: Line['kind']) =>
    lines.filter((line) => line.kind === kind).flatMap(({ start }) => start.children.map(moveOf));
  return {
    words: wordsOf(section, 'chapter'),
    board,
    fold,
    hints: [...section.querySelectorAll<HTMLDetailsElement>('.exercise-help > .hint')],
    key,
    view: view === 'black' ? 'black' : 'white',
    turn: turn === 'black' ? 'black' : 'white',
    lastMove: last === '' ? undefined : { from: last.slice(0, 2), to: last.slice(2, 4) },
    lines,
    moves: { answer: movesOf('answer'), also: movesOf('also'), wrong: movesOf('wrong') },
    spots,
  };
}

function readLines(fold: ParentNode, spots: ReadonlyMap<Element, Spot>): Line[] {
  return [...fold.querySelectorAll<HTMLElement>('.moves')].flatMap((element) => {
    const start = spots.get(element);
    const { line } = dataOf('moves', element);
    const kind = (['answer', 'also', 'wrong'] as const).find((name) => name === line);
    return start === undefined || kind === undefined ? [] : [{ kind, element, start }];
  });
}

function moveOf(spot: Spot): SpotMove {
  return {
    spot,
    id: keyOf(spot) ?? '',
    bad: dataOf('move', spot.element).bad !== undefined,
    children: spot.children.map(moveOf),
  };
}

/** `Position.key` of the position that a move leads to. */
export function keyOf({ address }: Spot): string | undefined {
  return readPositionAddress(address)?.key;
}
