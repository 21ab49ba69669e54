import { initialPosition } from '../../chess/initial.ts';
import type { Color } from '../../chess/types.ts';
import type { SearchWords } from '../../contract/words.ts';
import { onBoard } from '../board/board-state.ts';
import type { CourseBoard } from '../board/course-board.ts';
import { setUpByHand } from '../board/set-up.ts';
import { describe } from '../words.ts';
import { type SearchResult, showResult } from './search-result.ts';

const emptyBoard = '8/8/8/8/8/8/8/8';
const [fullBoard = emptyBoard] = initialPosition.fen.split(' ');

export interface BoardSearch {
  readonly view: Color;
  readonly answerTo: (placement: string) => SearchResult | Promise<SearchResult>;
}

/** Searches for what the reader sets up on a board, at every piece anew. */
export function startBoardSearch(
  place: Element,
  words: SearchWords,
  { view, answerTo }: BoardSearch,
): void {
  const board = place.querySelector<CourseBoard>('course-board');
  const section = place.closest('section');
  if (board === null || section === null) throw new Error('the search page has no board');
  setUpByHand(board);
  const show = (placement: string) =>
    board.show({
      placement,
      view,
      description: describe(placement, words),
    });
  let shown = '';
  const search = async (placement: string) => {
    shown = placement;
    show(placement);
    const answer =
      placement === emptyBoard
        ? { status: [words.emptyBoard], found: [] }
        : await answerTo(placement);
    // Meanwhile another piece may have been set.
    if (shown === placement) showResult(section, answer);
  };
  onBoard(board, 'course-board-edit', ({ placement }) => void search(placement));
  for (const [selector, placement] of [
    ['.board-empty', emptyBoard],
    ['.board-full', fullBoard],
  ] as const) {
    place.querySelector(selector)?.addEventListener('click', () => void search(placement));
  }
  show(emptyBoard);
}
