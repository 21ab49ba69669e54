import type { Color } from '../../chess/types.ts';
import type { BoardPicture } from '../../draw/picture.ts';
import type { BoardMove } from '../board/board-state.ts';
import type { Glide } from '../board/draw-on.ts';
import { glideBetween } from '../glide.ts';
import type { Spot } from '../spots.ts';
import { describe } from '../words.ts';
import type { Exercise } from './read-exercise.ts';

export interface ExerciseController {
  /** A position of a line; absent while it is the exercise's own. */
  readonly spot: Spot | undefined;
  /**
   * `legal`: the moves that the reader may make there. `glides`: the piece is seen to move there from the position
   * before; to the exercise's own position that is the move before the question.
   */
  show(spot: Spot | undefined, legal: readonly BoardMove[], glides?: boolean): void;
}

/** Shows positions of an exercise on its board, and marks in its lines the move that led there. */
export function showPosition(exercise: Exercise): ExerciseController {
  const { board, words, view, lastMove } = exercise;
  let shown: Spot | undefined;
  let playable: readonly BoardMove[] = [];

  function draw(spot: Spot | undefined, legal: readonly BoardMove[], glide?: Glide): void {
    const picture = pictureOf(spot, exercise);
    const description = describe(picture.placement, words);
    board.show({ ...picture, view, glide, description, legal });
  }

  // On paper stands the question, whatever is played meanwhile.
  let isOnPaper = false;
  addEventListener('beforeprint', () => {
    isOnPaper = true;
    draw(undefined, []);
  });
  addEventListener('afterprint', () => {
    isOnPaper = false;
    draw(shown, playable);
  });
  return {
    get spot() {
      return shown;
    },
    show(spot, legal, glides = false) {
      const before = shown;
      before?.element.removeAttribute('aria-current');
      shown = spot;
      playable = legal;
      if (spot?.move !== undefined) spot.element.setAttribute('aria-current', 'true');
      const glide = spot === undefined ? lastMove : glideTo(spot, before);
      if (!isOnPaper) draw(spot, legal, glides ? glide : undefined);
    },
  };
}

function pictureOf(spot: Spot | undefined, { key, lastMove, turn }: Exercise): BoardPicture {
  const [placement = ''] = key.split(' ');
  if (spot === undefined) return { placement, lastMove, turn };
  const toMove = spot.move === undefined ? turn : otherSide(spot.move.color);
  return { ...spot, lastMove: spot.move ?? lastMove, turn: toMove };
}

function otherSide(color: Color): Color {
  return color === 'white' ? 'black' : 'white';
}

/** From the exercise's own position it is the line's first move. */
function glideTo(spot: Spot, before: Spot | undefined): Glide | undefined {
  return before === undefined ? spot.move : glideBetween(before, spot);
}
