import type { PracticeWords } from '../../contract/words.ts';
import { placeHref } from '../../lookup/index.ts';
import { counted } from '../counted.ts';
import { make, makeButton } from '../element.ts';
import { focusable } from './focusable.ts';
import type { How } from './item.ts';
import type { Session } from './session.ts';
import { printedNodes } from './words.ts';

/** What came of a session, and where to read about the moves that were missed. */
export function makeEndView(
  session: Session,
  words: PracticeWords,
  onBack: () => void,
): { readonly element: HTMLElement; start(): void } {
  const { practice } = words;
  const { outcomes, tasks } = session;
  const early = session.stage.kind !== 'end';
  const count = (...hows: How[]) => outcomes.filter(({ how }) => hows.includes(how)).length;
  const heading = focusable(make('h2', '', early ? practice.endedEarly : practice.ended));
  const sentences = [
    outcomes.length === 0 ? practice.answeredNone : counted(practice.answered, outcomes.length),
    ...(count('known') > 0 ? [counted(practice.atOnce, count('known'))] : []),
    ...(count('slow') > 0 ? [counted(practice.slowly, count('slow'))] : []),
  ];
  const element = make('section', 'practice-end', heading, make('p', '', sentences.join(' ')));
  const missed = outcomes.filter(({ how }) => how === 'wrong' || how === 'shown');
  if (missed.length > 0) {
    const list = make('ul', 'practice-missed');
    for (const { position } of missed) list.append(missedMove(session, position, words));
    element.append(make('p', '', counted(practice.missed, missed.length)), list);
  }
  const unasked = tasks.filter(({ show, graded, notBefore }) => !show && !graded && notBefore);
  if (unasked.length > 0) element.append(make('p', '', counted(practice.seen, unasked.length)));
  element.append(make('p', 'practice-onward', makeButton(practice.toOverview, onBack)));
  return { element, start: () => heading.focus() };
}

/** The advised move of a position, as a link to its place in the course. */
function missedMove({ course }: Session, index: number, words: PracticeWords): HTMLElement {
  const position = course.table.positions[index];
  const advice = position?.moves.find(({ kind }) => kind === 'advice');
  const item = make('li', '');
  if (advice === undefined) return item;
  const link = make('a', '', ...printedNodes(advice.san, words));
  const [place] = advice.at;
  if (place !== undefined) {
    link.href = placeHref(course.table, advice.to, place);
    item.append(link, ` – ${course.table.chapters[place[0]]?.title ?? ''}`);
  }
  return item;
}
