/** The script that other sites include: it defines `<course-board>`, once a page. */
import { EmbeddedBoard } from './embedded-board.ts';

if (!customElements.get('course-board')) customElements.define('course-board', EmbeddedBoard);
