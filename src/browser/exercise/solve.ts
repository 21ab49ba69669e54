import { onBoard } from '../board/board-state.ts';
import { makeMoveEntry } from '../board/move-entry.ts';
import { make, makeButton } from '../element.ts';
import type { Exercise } from './read-exercise.ts';
import { Solver } from './solver.ts';
import { makeTalk } from './talk.ts';
import { walkLines } from './walk-lines.ts';

/** Makes an exercise live: its board, a field for typing, and buttons in the place of the folded answer. */
export function solve(section: HTMLElement, exercise: Exercise): void {
  const { board, words, lines, spots, fold, hints } = exercise;
  const talk = makeTalk(
    lines.map(({ element }) => element),
    words,
  );
  const entry = makeMoveEntry(words, {
    legal: () => solver.movesHere(),
    onMoves: (moves) => board.make(moves),
    onUnread: (message) => solver.say(message),
  });
  const giveUp = makeButton(words.exercise.giveUp, () => solver.giveUp());
  const controls = make('div', 'exercise-controls', entry.element, giveUp);
  const solver = new Solver(section, exercise, { talk, entry, controls });

  // A reader who has opened the answer already sees what he would have asked for.
  const wasOpen = fold.open;
  const hadFocus = fold.contains(document.activeElement);
  fold.replaceWith(controls);
  board.after(talk.element);
  if (hadFocus) giveUp.focus({ preventScroll: true });

  onBoard(board, 'course-board-touch', () => solver.backToPlace());
  onBoard(board, 'course-board-move', (move) => solver.answer(move));
  onBoard(board, 'course-board-refuse', (refusal) => solver.refuse(refusal));
  for (const hint of hints) {
    hint.addEventListener('toggle', () => {
      if (hint.open) solver.helped();
    });
  }
  talk.onStep((step) => {
    if (step === 'answer') solver.giveUp();
    else if (step === 'again') {
      solver.begin(true);
      board.focusSquares();
    } else solver.walk(step);
  });
  walkLines(talk.element, {
    spots,
    neighbour: (way) => solver.neighbour(way),
    onSpot: (spot) => solver.look(spot),
  });
  solver.begin(false);
  if (wasOpen) solver.giveUp();
}
