import { initialPosition } from '../../chess/initial.ts';
import type { CourseTable, TableMove } from '../../contract/course-table.ts';
import { fill } from '../../contract/sentence.ts';
import type { TreeWords } from '../../contract/words.ts';
import { moveText, type Paths, pathsOf } from '../../lookup/index.ts';
import { wordsOf } from '../board/board-words.ts';
import { element } from '../element.ts';
import { lineFrom } from './course-lines.ts';
import { idOfPosition, type LineItem, makeLineItem } from './line-item.ts';
import { follow, makeTreeBoard } from './tree-board.ts';
import { listenForFolds } from './tree-keys.ts';

/** From this depth on all lists stand equally far in. */
const mostDepth = 5;

/** So many lines are shown at first, as far as the tree has so many. */
const shownAtFirst = 14;

/** Grows the tree of a course, the first lines of it unfolded; the rest is made when it is asked for. */
export function startTree(place: HTMLElement, table: CourseTable): void {
  const words = wordsOf(place, 'tree');
  const paths = pathsOf(table);
  /** Items that can be unfolded, by their button. */
  const items = new Map<HTMLButtonElement, { item: LineItem; grow: () => void }>();
  /** The button behind which the moves from a position stand. */
  const foldOf = new Map<number, HTMLButtonElement>();

  function grow(list: HTMLElement, from: number, moves: readonly TableMove[], depth = 0): void {
    for (const [index, move] of moves.entries()) {
      const line = lineFrom(table, paths, from, move);
      const item = makeLineItem(table, paths, line, words);
      if (index > 0 && depth > 0) item.item.prepend(...leadOf(paths, from, depth, words));
      list.append(item.item);
      const { fold, list: onward } = item;
      if (fold === undefined || onward === undefined) continue;
      foldOf.set(line.end, fold);
      items.set(fold, { item, grow: () => grow(onward, line.end, line.onward, depth + 1) });
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
    for (const { from } of paths.to(position)) {
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

  const body = element('div', { class: 'tree-body' });
  const board = makeTreeBoard(table, paths, words);
  place.append(body, board.panel);
  const start = paths.roots[0] ?? 0;
  board.show(start);
  for (const root of paths.roots) {
    const moves = table.positions[root]?.moves ?? [];
    if (moves.length === 0) continue;
    if (paths.roots.length > 1) body.append(heading(table, root, words));
    const list = element('ul', { class: 'tree-lines', role: 'list', 'aria-label': words.label });
    body.append(list);
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
  body.prepend(controls);

  listenForFolds(body, setFolded);
  follow(body, board.show, start);
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

/** What a line goes on from: said where it comes behind other lines and stands no further out (`tree.css`). */
function leadOf(paths: Paths, from: number, depth: number, words: TreeWords): HTMLElement[] {
  const last = paths.last(from);
  if (last === undefined) return [];
  const lead = element(
    'p',
    { class: 'tree-lead', 'data-depth': String(Math.min(depth, mostDepth)) },
    fill(words.after, { move: moveText(last, words.letters) }),
  );
  return [lead];
}

function heading({ positions, chapters }: CourseTable, root: number, words: TreeWords): Element {
  const [chapter = -1] = positions[root]?.at[0] ?? [];
  const start = positions[root]?.key === initialPosition.key;
  const title = chapters[chapter]?.title ?? '';
  return element('h2', {}, start ? words.start : fill(words.elsewhere, { chapter: title }));
}
