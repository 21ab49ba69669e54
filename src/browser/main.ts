/** The script of every page: it makes live what the page holds, and does nothing elsewhere. */
import { CourseBoard } from './board/course-board.ts';
import { startExercises } from './exercise.ts';
import { followEditions } from './offline/follow-editions.ts';
import { startReading } from './reading.ts';

customElements.define('course-board', CourseBoard);
const board = document.querySelector('.beside course-board');
const article = document.querySelector('article');
if (article !== null) startExercises(article);
if (board instanceof CourseBoard && article !== null) startReading(board, article);
const edition = document.querySelector<HTMLElement>('.edition');
if (edition !== null) followEditions(edition);
const printNow = document.querySelector<HTMLElement>('.print-now');
if (printNow !== null) {
  printNow.hidden = false;
  printNow.addEventListener('click', () => print());
}
