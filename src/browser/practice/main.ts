import { givenNotes, givenTable } from '../../lookup/index.ts';
import { wordsOf } from '../board/board-words.ts';
import { practiceCourse } from './session/practice-course.ts';
import { startPractice } from './start-practice.ts';

const place = document.getElementById('practice');
if (place !== null) {
  void startPractice(place, practiceCourse(givenTable(), givenNotes()), wordsOf(place, 'practice'));
}
