import type { CourseTable } from '../../contract/course-table.ts';
import { fill } from '../../contract/sentence.ts';
import type { SearchWords } from '../../contract/words.ts';
import { drawBoardInPage } from '../../draw/page-board.ts';
import { pageHref, pathsOf, placeHref } from '../../lookup/index.ts';
import { courseMove } from '../course-move.ts';
import { element } from '../element.ts';
import { inLanguageOf } from '../in-language-of.ts';
import { describe } from '../words.ts';
import { firstPlace, where } from './where.ts';

/** A position of the course: its board, its places, and how the course goes on. */
export function positionCard(table: CourseTable, index: number, words: SearchWords): Element {
  const position = table.positions[index];
  const [placement = '', side] = (position?.key ?? '').split(' ');
  const turn = side === 'b' ? 'black' : 'white';
  const view = table.side === 'black' ? 'black' : 'white';
  const place = where(table, index, words);
  const still = element('div', { class: 'still' });
  still.innerHTML = drawBoardInPage({
    placement,
    view,
    turn,
    title: fill(words.board, { where: place }),
    desc: describe(placement, words),
  });
  const told = element(
    'div',
    { class: 'position-told' },
    element(
      'p',
      { class: 'position-where' },
      element('a', { href: firstPlace(table, index) }, place),
      `. ${words.toMove[turn]}.`,
    ),
  );
  if (position?.title !== undefined) {
    told.append(element('p', { class: 'position-title', ...inLanguageOf(table) }, position.title));
  }
  told.append(places(table, index, words), onward(table, index, words));
  told.append(
    element(
      'p',
      {},
      element('a', { href: pageHref(table, `tree.html#position-${index}`) }, words.inTree),
    ),
  );
  return element('div', { class: 'position-card' }, still, told);
}

/** `Stands in “The pawn on d5” 2 3; in “Move orders”`: a chapter's first place, then the others. */
function places(table: CourseTable, index: number, words: SearchWords): Element {
  const line = element('p', {}, element('span', { class: 'told-label' }, `${words.places} `));
  let before: number | undefined;
  let number = 1;
  for (const place of table.positions[index]?.at ?? []) {
    const [chapter] = place;
    const title = table.chapters[chapter]?.title ?? '';
    number = chapter === before ? number + 1 : 1;
    const link = element('a', { href: placeHref(table, index, place) });
    link.textContent = number > 1 ? `${number}` : fill(words.inChapter, { chapter: title });
    if (number > 1) {
      link.setAttribute('aria-label', fill(words.againIn, { chapter: title, number: `${number}` }));
    }
    if (before !== undefined) line.append(number > 1 ? ' ' : '; ');
    line.append(link);
    before = chapter;
  }
  return line;
}

function onward(table: CourseTable, index: number, words: SearchWords): Element {
  const moves = table.positions[index]?.moves ?? [];
  if (moves.length === 0) return element('p', {}, words.ends);
  const line = element('p', {}, element('span', { class: 'told-label' }, `${words.goesOn} `));
  const { step } = pathsOf(table);
  moves.forEach((move, at) => {
    line.append(at === 0 ? '' : ', ', ...courseMove(table, step(index, move), words));
  });
  return line;
}
