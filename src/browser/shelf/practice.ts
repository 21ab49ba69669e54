/** The script of the page that practises all that is due today, whatever course it is of. */
import { wordsOf } from '../board/board-words.ts';
import { givenCourses } from './load-course.ts';
import { ShelfPractice } from './shelf-practice.ts';

const place = document.getElementById('practice');
if (place !== null) {
  const page = place.closest<HTMLElement>('[data-shelf]') ?? place;
  void new ShelfPractice(place, givenCourses(page), wordsOf(place, 'shelfPractice')).open();
}
