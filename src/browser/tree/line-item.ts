import type { CourseTable } from '../../contract/course-table.ts';
import { fill } from '../../contract/sentence.ts';
import type { TreeWords } from '../../contract/words.ts';
import { moveText, type Paths } from '../../lookup/index.ts';
import { element } from '../element.ts';
import type { CourseLine } from './course-lines.ts';
import { treeMove } from './tree-move.ts';

export interface LineItem {
  readonly item: HTMLLIElement;
  /** Unfolds what the line goes on with; absent where it does not. */
  readonly fold?: HTMLButtonElement;
  /** The list of what it goes on with, empty until it is unfolded for the first time. */
  readonly list?: HTMLUListElement;
}

/** The id of the move by which the tree reaches a position. */
export function idOfPosition(position: number): string {
  return `position-${position}`;
}

export function makeLineItem(
  table: CourseTable,
  paths: Paths,
  line: CourseLine,
  words: TreeWords,
): LineItem {
  const text = element('span', { class: 'tree-text' });
  let interrupted = true;
  line.moves.forEach((step, index) => {
    const parts = treeMove(table, step, words, !interrupted && step.color === 'black');
    const [button] = parts;
    const last = index === line.moves.length - 1;
    if (button && !(last && line.meets)) button.id = idOfPosition(step.move.to);
    // The arrows lead along a line, Tab from line to line.
    if (button && index > 0) button.tabIndex = -1;
    text.append(...(index === 0 ? [] : [' ']), ...parts);
    interrupted = parts.some((part) => part.matches('.move-kind'));
    const title = table.positions[step.move.to]?.title;
    if (title !== undefined) {
      text.append(' ', element('span', { class: 'position-title' }, title));
      interrupted = true;
    }
  });
  if (line.meets) text.append(' ', ...told(table, paths, line.end, words));
  const row = element('div', { class: 'tree-line' }, text);
  const item = element('li', {}, row);
  if (line.onward.length === 0) return { item };

  const count = String(line.onward.length);
  const last = line.moves.at(-1);
  const move = last === undefined ? '' : moveText(last, words.letters);
  const list = element('ul', { role: 'list' });
  list.hidden = true;
  const fold = element('button', {
    type: 'button',
    class: 'tree-fold',
    'aria-expanded': 'false',
    'aria-label': fill(words.unfold, { count, move }),
  });
  row.prepend(fold);
  text.append(' ', element('span', { class: 'tree-ways' }, fill(words.ways, { count })));
  item.append(list);
  return { item, fold, list };
}

/** Where the course is told that a line comes into. */
function told({ positions }: CourseTable, paths: Paths, end: number, words: TreeWords): Node[] {
  const home = paths.last(end);
  const move = home === undefined ? words.start : moveText(home, words.letters);
  const goesOn = (positions[end]?.moves.length ?? 0) > 0;
  const link = element(
    'a',
    { class: 'tree-see', href: `#${idOfPosition(end)}` },
    fill(goesOn ? words.see : words.same, { move }),
  );
  return [element('span', { class: 'tree-meets' }, link)];
}
