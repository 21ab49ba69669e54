import { numberSign } from '../../../chess/letters.ts';
import type { PracticeWords } from '../../../contract/words.ts';
import { noteName, pathsOf } from '../../../lookup/index.ts';
import { make } from '../../element.ts';
import { inLanguageOf } from '../../in-language-of.ts';
import type { CourseHome, MoveFrom } from '../session/practice-course.ts';
import { type Session, type Turn, turnAfter } from '../session/session.ts';
import { printedNodes } from './words.ts';

/** So many moves are shown of a line; the board shows the rest. */
const shown = 8;

/** The last moves that lead to the board, the very last one standing out. */
export function lineText(session: Session, words: PracticeWords): (Node | string)[] {
  const all = movesOf(session);
  const earliest = Math.max(0, all.length - shown);
  // From a move of White's on, which has its number.
  const isBlack = earliest > 0 && all[earliest]?.turn.color === 'black';
  const first = isBlack ? earliest - 1 : earliest;
  const moves = all.slice(first).flatMap(({ turn, san }, index) => {
    const sign = turn.color === 'white' ? numberSign(turn).replace(/\.$/, '.\u00a0') : '';
    const number = sign === '' && index === 0 ? numberSign(turn) : sign;
    const isLast = first + index === all.length - 1;
    const text = make(isLast ? 'b' : 'span', '', number, ...printedNodes(san, words));
    return [index === 0 ? '' : ' ', text];
  });
  return [first > 0 ? '… ' : '', ...moves];
}

/** The moves to where the line begins, as the course comes there, and its own. */
function movesOf(session: Session): { readonly turn: Turn; readonly san: string }[] {
  const { course, start, line } = session;
  const before = pathsOf(course.table).to(start.position);
  return [
    ...before.map(({ number, color, move }) => ({ turn: { number, color }, san: move.san })),
    ...line.map(({ move }, index) => ({ turn: turnAfter(session, index), san: move.san })),
  ];
}

/** The author's comments on a move of the course. The site has rendered and cleaned them. */
export function noteOf(
  { course }: Pick<Session, 'course'>,
  { from, move }: MoveFrom,
): HTMLElement | undefined {
  const home = course.homeOf?.(from);
  const html = course.notes.notes[noteName(from, move.san)]?.html ?? '';
  if (html === '') return undefined;
  const note = make('span', 'practice-note');
  note.innerHTML = html;
  if (home !== undefined) settle(note, home);
  return note;
}

/** Links and pictures of a course lead from its own pages, and its words are in its own language. */
function settle(note: HTMLElement, home: CourseHome): void {
  const { lang } = inLanguageOf(home);
  if (lang !== undefined) note.lang = lang;
  for (const name of ['href', 'src']) {
    for (const each of note.querySelectorAll(`:not(svg *)[${name}]`)) {
      const address = each.getAttribute(name) ?? '';
      if (!/^(?:[a-z][a-z0-9+.-]*:|#|\/)/i.test(address))
        each.setAttribute(name, home.at + address);
    }
  }
}
