import { fill } from '../../contract/sentence.ts';
import { element, make } from '../element.ts';

interface CappedLooks {
  readonly step: number;
  /** What shows more: `Show {count} more`. */
  readonly more: string;
  /** Classes beside its own, and of its items. */
  readonly list?: string;
  readonly item?: string;
}

/** A list of which so many items are made at once, and as many more for each press of its button. */
export function cappedList<Item>(
  items: readonly Item[],
  { step, more, list: listClass = '', item: itemClass = '' }: CappedLooks,
  content: (item: Item) => readonly (Node | string)[],
): Element[] {
  const list = element('ul', { class: `found-list ${listClass}`.trim(), role: 'list' });
  const button = element('button', { type: 'button', class: 'show-more' });
  let shown = 0;
  const grow = (): Element | null => {
    const fresh = items
      .slice(shown, shown + step)
      .map((item) => make('li', itemClass, ...content(item)));
    list.append(...fresh);
    shown += fresh.length;
    button.textContent = fill(more, { count: String(Math.min(step, items.length - shown)) });
    if (shown >= items.length) button.remove();
    return fresh[0]?.querySelector('a') ?? null;
  };
  button.addEventListener('click', () => {
    const first = grow();
    // The button may be gone, and the focus must not be.
    if (first instanceof HTMLElement) first.focus();
  });
  grow();
  return shown < items.length ? [list, button] : [list];
}
