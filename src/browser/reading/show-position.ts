import { readPositionAddress } from '../../contract/position-address.ts';
import type { ChapterWords } from '../../contract/words.ts';
import type { BoardState } from '../board/board-state.ts';
import type { CourseBoard } from '../board/course-board.ts';
import { glideBetween } from '../glide.ts';
import { makeStop } from '../link-moves.ts';
import type { Spot } from '../spots.ts';
import { caption, describe, numbered, otherPlace } from '../words.ts';
import { hashOf, noteShown } from './address.ts';
import { commentOf } from './comment-of.ts';

export interface BoardController {
  readonly spot: Spot;
  show(spot: Spot): void;
  /** The same position in a text that was renewed; the board shows it anew unless something of the reader's is there. */
  renew(spot: Spot): void;
}

/** Shows positions of the text on its board, and marks in the text the move that led there. */
export function showPosition(
  first: Spot,
  board: CourseBoard,
  words: ChapterWords,
  waysOn: (spot: Spot) => readonly Spot[],
): BoardController {
  let shown = first;
  function take(spot: Spot, before: Spot | undefined): void {
    noteShown(spot.element.id);
    before?.element.removeAttribute('aria-current');
    if (spot.move !== undefined) {
      spot.element.setAttribute('aria-current', 'true');
      makeStop(spot.element);
    }
    shown = spot;
  }
  function change(spot: Spot, before: Spot | undefined): void {
    take(spot, before);
    board.show({
      ...stateOf(spot, waysOn(spot), words),
      glide: before && glideBetween(before, spot),
    });
  }
  change(first, undefined);
  return {
    get spot() {
      return shown;
    },
    show(spot) {
      if (spot !== shown) change(spot, shown);
    },
    renew(spot) {
      if (board.held) take(spot, shown);
      else change(spot, undefined);
    },
  };
}

function stateOf(spot: Spot, ways: readonly Spot[], words: ChapterWords): BoardState {
  return {
    key: readPositionAddress(spot.address)?.key,
    placement: spot.placement,
    view: spot.view,
    marks: spot.marks,
    arrows: spot.arrows,
    lastMove: spot.move ?? spot.lastMove,
    turn: / b /.test(readPositionAddress(spot.address)?.key ?? '') ? 'black' : 'white',
    caption: { text: caption(spot, words), href: hashOf(spot.element.id) },
    description: describe(spot.placement, words),
    comment: commentOf(spot),
    choices: ways.map(numbered),
    also: spot.also.map(({ href, move }) => ({ href, text: otherPlace(href, move, words) })),
    canGoBack: spot.parent !== undefined,
    canGoOn: ways.length > 0,
  };
}
