/** The script of the search page: words, positions, boards. */
import { dataOf } from '../contract/attributes.ts';
import { firstMoves, givenTable } from '../lookup/index.ts';
import { findPlacement } from '../lookup/search/find-placement.ts';
import { searchPositions } from '../lookup/search/search-positions.ts';
import { wordsOf } from './board/board-words.ts';
import { answerPlacement, answerPosition } from './search/answer-position.ts';
import { answerWords } from './search/search-by-words.ts';
import { startSearch } from './search/start-search.ts';

const place = document.querySelector<HTMLElement>('.course-search');
if (place !== null) searchCourse(place);

function searchCourse(place: HTMLElement): void {
  const table = givenTable();
  const words = wordsOf(place, 'search');
  const { probe = '' } = dataOf('page', place);
  const hint = place.querySelector('#page-position-hint .example');
  const example = firstMoves(table, words.letters);
  if (hint !== null && example !== '') hint.textContent = example;
  startSearch(place, {
    words,
    forWords: (query) => answerWords(query, table, words, probe),
    forPosition: (text) =>
      answerPosition(table, searchPositions(table, text, words.letters), words),
    onBoard: {
      view: table.side === 'black' ? 'black' : 'white',
      answerTo: (placement) => answerPlacement(table, findPlacement(table, placement), words),
    },
  });
}
