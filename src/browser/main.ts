/** The script of every page: it makes live what the page holds, and does nothing elsewhere. */

import { dataOf } from '../contract/attributes.ts';
import { textRenewed } from '../contract/renewed-text.ts';
import { closeAllPages } from './all-pages.ts';
import { beforeUse } from './before-use.ts';
import { CourseBoard } from './board/course-board.ts';
import { awaitExercises } from './exercise/at-need.ts';
import { followLanguage } from './follow-language.ts';
import { placesOfCourse } from './hosts.ts';
import { loadScript } from './load-script.ts';
import { followEditions } from './offline/follow-editions.ts';
import { isPiecemeal, layOutInTime } from './piecemeal.ts';
import { startReading } from './reading.ts';
import { whenIdle } from './when-idle.ts';

customElements.define('course-board', CourseBoard);
const texts = placesOfCourse().map((place) => ({
  board: place.querySelector('.beside course-board'),
  article: place.querySelector('article'),
}));
const live = () => {
  for (const { board, article } of texts) {
    // By then it may be gone from the page.
    if (!article?.isConnected) continue;
    awaitExercises(article);
    addEventListener(textRenewed, () => awaitExercises(article));
    if (board instanceof CourseBoard) startReading(board, article);
  }
};
if (isPiecemeal()) {
  layOutInTime();
  beforeUse(live);
} else live();
const { keep } = dataOf(
  'page',
  document.querySelector<HTMLElement>('[data-keep]') ?? document.body,
);
if (keep !== undefined) addEventListener('load', () => whenIdle(() => void loadScript(keep)));
const allPages = document.querySelector<HTMLDetailsElement>('.all-pages');
if (allPages !== null) closeAllPages(allPages);
followLanguage(document.querySelectorAll<HTMLAnchorElement>('.languages a'));
const edition = document.querySelector<HTMLElement>('.edition');
if (edition !== null) followEditions(edition);
const printNow = document.querySelector<HTMLElement>('.print-now');
if (printNow !== null) {
  printNow.hidden = false;
  printNow.addEventListener('click', () => print());
}
