import { numberSign } from '../../chess/letters.ts';
import { fill } from '../../contract/sentence.ts';
import { type BoardMove, onBoard } from '../board/board-state.ts';
import { makeMoveEntry } from '../board/move-entry.ts';
import { make, makeButton } from '../element.ts';
import type { Spot } from '../spots.ts';
import { onExercise } from './begin.ts';
import { judgeMove } from './judge-move.ts';
import { makeWay } from './make-way.ts';
import { type Exercise, type Line, readExercise } from './read-exercise.ts';
import { showPosition } from './show-position.ts';
import { makeTalk } from './talk.ts';
import { walkLines } from './walk-lines.ts';

/** Loaded for the first exercise that a reader comes near: each is then answered on its board or by typing. */
const begun = new WeakSet<HTMLElement>();
const makesWay = makeWay();

onExercise((section) => {
  if (begun.has(section)) return;
  begun.add(section);
  const exercise = readExercise(section);
  if (exercise === undefined) return;
  startExercise(section, exercise);
  makesWay(exercise.board);
});

function startExercise(section: HTMLElement, exercise: Exercise): void {
  const { board, words, legal, lines, spots } = exercise;
  const answers = lines.filter(({ kind }) => kind === 'answer');
  const shown = showPosition(exercise);
  const talk = makeTalk(
    lines.map(({ element }) => element),
    words,
  );
  const entry = makeMoveEntry(words, {
    legal: () => legal,
    onMoves: (moves) => {
      backToQuestion();
      board.make(moves);
    },
    onUnread: (message) => {
      backToQuestion();
      reply(message, []);
    },
  });
  const giveUp = makeButton(words.exercise.giveUp, () => {
    backToQuestion();
    end(words.exercise.given, answers);
  });
  const controls = make('div', 'exercise-controls', entry.element, giveUp);
  exercise.fold.replaceWith(controls);
  board.after(talk.element);

  function show(spot: Spot | undefined, glides = false): void {
    shown.show(spot, glides);
    talk.setSteps(spot?.parent !== undefined, (spot?.children.length ?? 0) > 0);
  }

  function ask(): void {
    show(undefined);
    reply('', []);
    controls.hidden = false;
    section.classList.remove('answered');
  }

  function backToQuestion(): void {
    if (shown.spot !== undefined) ask();
  }

  function reply(message: string, about: readonly Line[]): void {
    talk.say(
      message,
      about.map(({ element }) => element),
    );
  }

  /** The answer is known: what is left is to play it through. */
  function end(message: string, about: readonly Line[], reached?: Spot): void {
    const hadFocus = controls.contains(document.activeElement);
    controls.hidden = true;
    section.classList.add('answered');
    reply(message, about);
    show(reached ?? about[0]?.start, reached !== undefined);
    if (hadFocus) talk.focus();
  }

  function answer({ san }: BoardMove): void {
    entry.clear();
    const judged = judgeMove(san, lines);
    if (judged.kind === 'legal') {
      show(undefined);
      reply(fill(words.exercise.legal, { move: numberHere(exercise) + san }), []);
    } else if (judged.kind === 'answer') {
      const others = answers.filter((line) => !judged.lines.includes(line));
      end(words.exercise.right, [...judged.lines, ...others], judged.reached);
    } else {
      reply(words.exercise[judged.kind], judged.lines);
      show(judged.reached, true);
    }
  }

  const neighbour = (way: 'back' | 'on') =>
    way === 'back' ? shown.spot?.parent : shown.spot?.children[0];

  onBoard(board, 'course-board-touch', backToQuestion);
  onBoard(board, 'course-board-move', answer);
  onBoard(board, 'course-board-refuse', ({ piece, from, to }) => {
    const parts = { piece: words.pieces[piece.kind], from, to: to ?? '' };
    reply(to === undefined ? words.notYours[exercise.turn] : fill(words.cannotGo, parts), []);
  });
  talk.onStep((way) => {
    const spot = way === 'again' ? undefined : neighbour(way);
    if (spot !== undefined) show(spot, true);
    if (way !== 'again') return;
    ask();
    board.focusSquares();
  });
  walkLines(talk.element, { spots, neighbour, onSpot: (spot) => show(spot, true) });
  ask();
}

/** `14...`: the number of the move that is asked for. */
function numberHere({ lines, turn }: Exercise): string {
  const first = lines[0]?.start.children[0]?.move;
  return first === undefined ? '' : numberSign({ number: first.number, color: turn });
}
