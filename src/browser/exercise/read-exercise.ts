import type { Color, Square } from '../../chess/types.ts';
import { dataOf } from '../../contract/attributes.ts';
import type { ChapterWords } from '../../contract/words.ts';
import type { BoardMove } from '../board/board-state.ts';
import { wordsOf } from '../board/board-words.ts';
import type { CourseBoard } from '../board/course-board.ts';
import { readLegal } from '../board/read-legal.ts';
import { linkMoves } from '../link-moves.ts';
import { readSpots, type Spot } from '../spots.ts';

/** An exercise as it stands in the page. */
export interface Exercise {
  readonly words: ChapterWords;
  readonly board: CourseBoard;
  /** The answer, folded: without scripts the reader looks there. */
  readonly fold: HTMLElement;
  readonly placement: string;
  readonly view: Color;
  readonly turn: Color;
  /** The move before the question. */
  readonly lastMove: { readonly from: Square; readonly to: Square } | undefined;
  readonly legal: readonly BoardMove[];
  readonly lines: readonly Line[];
  /** The positions of its lines by their elements. */
  readonly spots: ReadonlyMap<Element, Spot>;
}

/** A line of an exercise: its element in the page and its first position. */
export interface Line {
  readonly kind: 'answer' | 'also' | 'wrong';
  readonly element: HTMLElement;
  readonly start: Spot;
}

/** Reads an exercise from its section; nothing where it has no board or no answer. */
export function readExercise(section: HTMLElement): Exercise | undefined {
  // The class of the page's own script: this one is loaded beside it and knows its type only.
  const board = section.querySelector<CourseBoard>('course-board:defined');
  const fold = section.querySelector<HTMLElement>('.exercise-help > .answer');
  if (board === null || fold === null) return undefined;
  const { legal = '', p: position = '', last = '', view, turn } = dataOf('exercise', section);
  const [placement = ''] = position.split(' ');
  const spots = readSpots(section, '.moves');
  linkMoves(spots);
  return {
    words: wordsOf(section, 'chapter'),
    board,
    fold,
    placement,
    view: view === 'black' ? 'black' : 'white',
    turn: turn === 'black' ? 'black' : 'white',
    lastMove: last === '' ? undefined : { from: last.slice(0, 2), to: last.slice(2, 4) },
    legal: readLegal(legal),
    lines: readLines(fold, spots),
    spots,
  };
}

function readLines(fold: ParentNode, spots: ReadonlyMap<Element, Spot>): Line[] {
  return [...fold.querySelectorAll<HTMLElement>('.moves')].flatMap((element) => {
    const start = spots.get(element);
    const kind = (['answer', 'also', 'wrong'] as const).find((name) =>
      element.classList.contains(`${name}-line`),
    );
    return start === undefined || kind === undefined ? [] : [{ kind, element, start }];
  });
}
