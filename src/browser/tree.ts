/** The script of the page with the tree of the course: lines unfold, one after another. */
import { givenTable } from '../lookup/index.ts';
import { startTree } from './tree/start-tree.ts';

const place = document.querySelector<HTMLElement>('.course-tree');
if (place !== null) startTree(place, givenTable());
