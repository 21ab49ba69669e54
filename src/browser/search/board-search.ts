import { initialPosition } from '../../chess/initial.ts';
import type { CourseTable } from '../../contract/course-table.ts';
import type { SearchWords } from '../../contract/words.ts';
import { findPlacement } from '../../lookup/search/find-placement.ts';
import { onBoard } from '../board/board-state.ts';
import type { CourseBoard } from '../board/course-board.ts';
import { setUpByHand } from '../board/set-up.ts';
import { describe } from '../words.ts';
import { showAnswer } from './answer.ts';
import { answerPlacement } from './answer-position.ts';

const emptyBoard = '8/8/8/8/8/8/8/8';
const [fullBoard = emptyBoard] = initialPosition.fen.split(' ');

/** Searches for what the reader sets up on a board, at every piece anew. */
export function startBoardSearch(place: Element, table: CourseTable, words: SearchWords): void {
  const board = place.querySelector<CourseBoard>('course-board');
  const section = place.closest('section');
  if (board === null || section === null) throw new Error('the search page has no board');
  setUpByHand(board);
  const show = (placement: string) =>
    board.show({
      placement,
      view: table.side === 'black' ? 'black' : 'white',
      description: describe(placement, words),
    });
  const search = (placement: string) => {
    show(placement);
    showAnswer(
      section,
      placement === emptyBoard
        ? { status: [words.emptyBoard], found: [] }
        : answerPlacement(table, findPlacement(table, placement), words),
    );
  };
  onBoard(board, 'course-board-edit', ({ placement }) => search(placement));
  for (const [selector, placement] of [
    ['.board-empty', emptyBoard],
    ['.board-full', fullBoard],
  ] as const) {
    place.querySelector(selector)?.addEventListener('click', () => search(placement));
  }
  show(emptyBoard);
}
