import { fill } from '../../../contract/sentence.ts';
import type { PracticeWords } from '../../../contract/words.ts';
import { element, make } from '../../element.ts';
import type { Session } from '../session/session.ts';
import { type Mark, marksOf } from './marks.ts';
import { svg } from './svg.ts';

/** The moves of a session in a row, each with how it stands, by shape and in words. */
export function fillStrip(list: HTMLElement, session: Session, { practice }: PracticeWords): void {
  const marks = marksOf(session).map((mark, index) => {
    const sign = markSign(mark);
    sign.removeAttribute('aria-hidden');
    sign.setAttribute('role', 'img');
    sign.setAttribute('aria-label', fill(practice.marks[mark], { n: String(index + 1) }));
    return make('li', mark === 'here' ? 'here' : '', sign);
  });
  list.replaceChildren(...marks);
}

export function makeStrip({ practice }: PracticeWords): HTMLElement {
  // Safari takes a list without bullets for none, unless it says that it is one.
  return element('ol', { class: 'practice-strip', role: 'list', 'aria-label': practice.session });
}

/** A sign of the page's sprite. */
export function markSign(mark: Mark): SVGElement {
  const sign = svg('svg', {
    class: `state state-${mark}`,
    viewBox: '0 0 12 12',
    'aria-hidden': 'true',
  });
  sign.append(svg('use', { href: `#state-${mark}` }));
  return sign;
}
