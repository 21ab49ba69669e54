/** The script of the search page: words, positions, boards. */
import { givenTable } from '../lookup/index.ts';
import { startSearch } from './search/start-search.ts';

const place = document.querySelector<HTMLElement>('.course-search');
if (place !== null) startSearch(place, givenTable());
