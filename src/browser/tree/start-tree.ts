import { initialPosition } from '../../chess/initial.ts';
import type { CourseTable, TableMove } from '../../contract/course-table.ts';
import { fill } from '../../contract/sentence.ts';
import type { TreeWords } from '../../contract/words.ts';
import { waysOf } from '../../lookup/index.ts';
import { wordsOf } from '../board/board-words.ts';
import { element } from '../element.ts';
import { lineFrom } from './course-lines.ts';
import { idOfPosition, type LineItem, makeLineItem } from './line-item.ts';
import { listenForFolds } from './tree-keys.ts';

/** So many lines are shown at first, as far as the tree has so many. */
const shownAtFirst = 14;

/** Grows the tree of a course, the first lines of it unfolded; the rest is made when it is asked for. */
export function startTree(place: HTMLElement, table: CourseTable): void {
  const words = wordsOf(place, 'tree');
  const ways = waysOf(table);
  /** Items that can be unfolded, by their button. */
  const items = new Map<HTMLButtonElement, { item: LineItem; grow: () => void }>();
  /** The button behind which the moves from a position stand. */
  const foldOf = new Map<number, HTMLButtonElement>();

  function grow(list: HTMLElement, from: number, moves: readonly TableMove[]): void {
    for (const move of moves) {
      const line = lineFrom(table, ways, from, move);
      const item = makeLineItem(table, ways, line, words);
      list.append(item.item);
      const { fold, list: onward } = item;
      if (fold === undefined || onward === undefined) continue;
      foldOf.set(line.end, fold);
      items.set(fold, { item, grow: () => grow(onward, line.end, line.onward) });
    }
  }

  function setFolded(fold: HTMLButtonElement, folded: boolean): void {
    const known = items.get(fold);
    const list = known?.item.list;
    if (known === undefined || list === undefined) return;
    if (!folded && !list.hasChildNodes()) known.grow();
    list.hidden = folded;
    fold.setAttribute('aria-expanded', String(!folded));
  }

  /** Unfolds the tree down to a position and puts the focus on the move to it. */
  function reveal(position: number): boolean {
    for (const { from } of ways.to(position)) {
      const fold = foldOf.get(from);
      if (fold !== undefined) setFolded(fold, false);
    }
    const link = document.getElementById(idOfPosition(position));
    link?.focus({ preventScroll: true });
    link?.scrollIntoView({ block: 'center' });
    return link !== null;
  }

  function revealAddress(): void {
    const [, position] = /^#position-(\d+)$/.exec(location.hash) ?? [];
    if (position !== undefined) reveal(Number(position));
  }

  for (const root of ways.roots) {
    const moves = table.positions[root]?.moves ?? [];
    if (moves.length === 0) continue;
    if (ways.roots.length > 1) place.append(heading(table, root, words));
    const list = element('ul', { class: 'tree-lines', role: 'list', 'aria-label': words.label });
    place.append(list);
    grow(list, root, moves);
  }
  // A Map goes on with what is added meanwhile: the tree unfolds in breadth.
  for (const fold of items.keys()) {
    if (place.querySelectorAll('.tree-lines li').length >= shownAtFirst) break;
    setFolded(fold, false);
  }

  const all = (text: string, folded: boolean): HTMLButtonElement => {
    const button = element('button', { type: 'button' }, text);
    button.addEventListener('click', () => {
      for (const fold of items.keys()) setFolded(fold, folded);
    });
    return button;
  };
  const controls = element('p', { class: 'tree-controls' });
  controls.append(all(words.unfoldAll, false), all(words.foldAll, true));
  place.querySelector('.tree-lines, h2')?.before(controls);

  listenForFolds(place, setFolded);
  place.addEventListener('click', (event) => {
    const link = event.target instanceof Element ? event.target.closest('a.tree-see') : null;
    const [, position] = /^#position-(\d+)$/.exec(link?.getAttribute('href') ?? '') ?? [];
    if (position === undefined || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    history.pushState(null, '', `#${idOfPosition(Number(position))}`);
    reveal(Number(position));
  });
  addEventListener('popstate', revealAddress);
  revealAddress();
}

function heading({ positions, chapters }: CourseTable, root: number, words: TreeWords): Element {
  const [chapter = -1] = positions[root]?.at[0] ?? [];
  const start = positions[root]?.key === initialPosition.key;
  const title = chapters[chapter]?.title ?? '';
  return element('h2', {}, start ? words.start : fill(words.elsewhere, { chapter: title }));
}
