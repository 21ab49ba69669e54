import type { CourseTable } from '../../contract/course-table.ts';
import { fill } from '../../contract/sentence.ts';
import type { TreeWords } from '../../contract/words.ts';
import { drawBoardInPage } from '../../draw/page-board.ts';
import { moveText, type Paths, placeHref } from '../../lookup/index.ts';
import { element } from '../element.ts';
import { describe } from '../words.ts';
import { positionOfMove } from './tree-move.ts';

/** So many chapters are named that read on from a position. */
const mostChapters = 3;

/**
 * The board beside the tree: it follows the move that has the focus or lies under the mouse, and leads to where
 * the course tells it.
 */
export function makeTreeBoard(
  table: CourseTable,
  paths: Paths,
  words: TreeWords,
): { readonly panel: HTMLElement; show(position: number): void } {
  const still = element('div', { class: 'still' });
  const said = element('div', { class: 'tree-said' });
  let shown: number | undefined;
  return {
    panel: element('div', { class: 'tree-board' }, still, said),
    show(position) {
      if (position === shown) return;
      shown = position;
      still.innerHTML = draw(table, position, words);
      said.replaceChildren(...tell(table, paths, position, words));
    },
  };
}

function draw({ positions, side }: CourseTable, position: number, words: TreeWords): string {
  const [placement = '', turn] = (positions[position]?.key ?? '').split(' ');
  return drawBoardInPage({
    placement,
    view: side === 'black' ? 'black' : 'white',
    turn: turn === 'b' ? 'black' : 'white',
    desc: describe(placement, words),
  });
}

/** The move, the title, and a link for each chapter that goes on from there. */
function tell(table: CourseTable, paths: Paths, position: number, words: TreeWords): HTMLElement[] {
  const last = paths.last(position);
  const { title, at = [] } = table.positions[position] ?? {};
  const move = last === undefined ? words.start : moveText(last, words.letters);
  const links = new Map<number, HTMLElement>();
  for (const place of at) {
    const [chapter] = place;
    if (links.has(chapter) || links.size >= mostChapters) continue;
    const name = table.chapters[chapter]?.title ?? '';
    const href = placeHref(table, position, place);
    links.set(
      chapter,
      element('p', {}, element('a', { href }, fill(words.read, { chapter: name }))),
    );
  }
  return [
    element('p', { class: 'tree-now' }, move),
    ...(title === undefined ? [] : [element('p', { class: 'position-title' }, title)]),
    ...links.values(),
  ];
}

/**
 * Lets the board follow what the reader points at in the tree. On the way to the board a mouse passes over other
 * moves: once it has left the tree the board shows the move that was chosen.
 */
export function follow(tree: HTMLElement, show: (position: number) => void, start: number): void {
  let chosen = start;
  const at = (event: Event): void => {
    const button = event.target instanceof Element ? event.target.closest('.course-move') : null;
    const position = button === null ? undefined : positionOfMove(button);
    if (button === null || position === undefined) return;
    show(position);
    if (event.type === 'pointerover') return;
    chosen = position;
    for (const before of tree.querySelectorAll('.course-move[aria-current]')) {
      before.removeAttribute('aria-current');
    }
    button.setAttribute('aria-current', 'true');
  };
  tree.addEventListener('focusin', at);
  // Some browsers give a button no focus by a click.
  tree.addEventListener('click', at);
  tree.addEventListener('pointerover', (event) => {
    if (event.pointerType === 'mouse') at(event);
  });
  tree.addEventListener('pointerleave', () => show(chosen));
}
