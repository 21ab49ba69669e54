/** The script of boards in components of an Astro site: `<course-line>`, and the moves in text that lead to its board. */
import { EmbeddedBoard } from './embedded-board.ts';
import { followMoves } from './follow-moves.ts';

class Line extends EmbeddedBoard {}

if (!customElements.get('course-line')) {
  customElements.define('course-line', Line);
  followMoves();
}
