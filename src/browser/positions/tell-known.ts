import { dataOf } from '../../contract/attributes.ts';
import type { PageWords } from '../../contract/words.ts';
import { stateMark } from '../../draw/state-marks.ts';
import { element } from '../element.ts';
import { dayOf } from '../practice/session/day.ts';
import { isDue, itemState } from '../practice/session/item-state.ts';
import type { Known } from './read-progress.ts';

/** Says on each plate what practice knows of its position, if it was ever asked. */
export function tellKnown(
  plates: readonly HTMLElement[],
  progress: ReadonlyMap<string, Known>,
  words: PageWords['positions'],
): void {
  if (progress.size === 0) return;
  const today = dayOf(Date.now());
  for (const plate of plates) {
    const { asked, advice = '' } = dataOf('plate', plate);
    const item = asked === undefined ? undefined : progress.get(asked);
    if (item === undefined) continue;
    const moves = advice.split(' ');
    const known = itemState(item, moves) === 'known';
    const [mark, said] = isDue(item, moves, today)
      ? (['due', words.back] as const)
      : known
        ? (['right', words.known] as const)
        : (['rest', words.met] as const);
    const told = element('span', { class: 'known' });
    told.innerHTML = stateMark(mark);
    told.append(` ${said}`);
    const line = plate.querySelector('p');
    line?.append(line.textContent?.trim() ? ' · ' : '', told);
  }
}
