import type { Color } from '../../chess/types.ts';
import type { BoardPicture } from '../../draw/picture.ts';
import type { Glide } from '../board/draw-on.ts';
import { glideBetween } from '../glide.ts';
import type { Spot } from '../spots.ts';
import { describe } from '../words.ts';
import type { Exercise } from './read-exercise.ts';

/** What the board of an exercise shows. */
export interface Shown {
  /** A position of a line; absent while it is the exercise's own, which the reader answers. */
  readonly spot: Spot | undefined;
  /** `glides`: the piece is seen to move there from the position before. */
  show(spot: Spot | undefined, glides?: boolean): void;
}

/** Shows positions of an exercise on its board, and marks in its lines the move that led there. */
export function showPosition(exercise: Exercise): Shown {
  const { board, words, legal, view } = exercise;
  let shown: Spot | undefined;

  function draw(spot: Spot | undefined, glide?: Glide): void {
    const picture = pictureOf(spot, exercise);
    board.show({
      ...picture,
      view,
      glide,
      description: describe(picture.placement, words),
      legal: spot === undefined ? legal : [],
    });
  }

  // On paper stands the question.
  addEventListener('beforeprint', () => draw(undefined));
  addEventListener('afterprint', () => draw(shown));
  return {
    get spot() {
      return shown;
    },
    show(spot, glides = false) {
      const before = shown;
      before?.element.removeAttribute('aria-current');
      shown = spot;
      if (spot?.move !== undefined) spot.element.setAttribute('aria-current', 'true');
      draw(spot, glides && spot ? glideTo(spot, before) : undefined);
    },
  };
}

function pictureOf(spot: Spot | undefined, { placement, lastMove, turn }: Exercise): BoardPicture {
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
