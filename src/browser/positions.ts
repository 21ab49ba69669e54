/** The script of the page of positions: the boards that come into view, and what the reader knows of each. */
import { dataOf } from '../contract/attributes.ts';
import { wordsOf } from './board/board-words.ts';
import { drawInView } from './positions/draw-in-view.ts';
import { readProgress } from './positions/read-progress.ts';
import { tellKnown } from './positions/tell-known.ts';

const place = document.querySelector<HTMLElement>('main');
if (place !== null) {
  const plates = [...place.querySelectorAll<HTMLElement>('.plate')];
  drawInView(plates);
  const { course } = dataOf('course', document.body);
  if (course !== undefined) {
    const words = wordsOf(place, 'positions');
    void readProgress(course).then((progress) => tellKnown(plates, progress, words));
  }
}
