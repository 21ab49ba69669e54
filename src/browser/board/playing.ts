import type { Color, Piece, Square } from '../../chess/types.ts';
import type { BoardWords } from '../../contract/words.ts';
import { readPlacement } from '../../draw/placement.ts';
import type { BoardMove, BoardRefusal, BoardState } from './board-state.ts';
import { squareInWords } from './board-words.ts';
import type { Hands } from './hands.ts';
import { askPromotion } from './promotion.ts';
import { makeSquares } from './squares.ts';

export interface Playing extends Hands {
  /** Makes the move, or asks which promotion is meant. */
  make(moves: readonly BoardMove[]): void;
  focus(): void;
}

export interface PlayingEvents {
  readonly onTouch: () => void;
  readonly onMove: (move: BoardMove) => void;
  readonly onRefuse: (refusal: BoardRefusal) => void;
}

/** Lets the reader move the pieces of the side to move: by a drag, by two taps, by keys. */
export function makePlaying(svg: Element, words: BoardWords, events: PlayingEvents): Playing {
  let pieces = new Map<Square, Piece>();
  let turn: Color = 'white';
  let legal: readonly BoardMove[] = [];
  const promotion = askPromotion(words);
  const squares = makeSquares(svg, words.squares, {
    onTouch: () => {
      promotion.clear();
      events.onTouch();
    },
    onTap(square) {
      const piece = pieces.get(square);
      const from = squares.chosen;
      if (from === square) squares.choose(undefined);
      else if (piece?.color === turn) squares.choose(square);
      else if (from !== undefined) {
        squares.choose(undefined);
        move(from, square);
      } else if (piece !== undefined) events.onRefuse({ piece, from: square });
    },
    onDrop(from, to) {
      if (to !== undefined) move(from, to);
    },
  });

  function move(from: Square, to: Square): void {
    const named = legal.filter((each) => each.from === from && each.to === to);
    const piece = pieces.get(from);
    if (named.length > 0) make(named);
    else if (piece !== undefined) events.onRefuse({ piece, from, to });
  }

  function make(moves: readonly BoardMove[]): void {
    const [only] = moves;
    if (only !== undefined && moves.length === 1) events.onMove(only);
    else promotion.ask(turn, moves, events.onMove);
  }

  return {
    elements: [squares.element, promotion.element],
    setUp({ placement, turn: toMove = 'white', legal: moves = [] }: BoardState, view) {
      pieces = new Map(readPlacement(placement).map(({ square, piece }) => [square, piece]));
      turn = toMove;
      legal = moves;
      promotion.clear();
      squares.setUp(
        view,
        (square) => squareInWords(square, pieces.get(square), words),
        (square) => pieces.get(square)?.color === turn,
      );
    },
    make,
    focus: squares.focus,
  };
}
