import { type Counted, fill } from '../../../contract/sentence.ts';
import type { PracticeWords } from '../../../contract/words.ts';
import { moveOf } from '../../../lookup/index.ts';
import { counted } from '../../counted.ts';
import { element, make } from '../../element.ts';
import type { Outcome, Session, Task } from '../session/session.ts';
import { type Act, makeActs } from './acts.ts';
import { focusable } from './focusable.ts';
import { noteOf } from './line-text.ts';
import { adviceStep, positionCard } from './position-card.ts';
import { inWords } from './sentences.ts';
import { fillStrip, makeStrip } from './strip.ts';

export interface EndEvents {
  /** Another session of these. */
  readonly onAgain: (tasks: readonly Task[]) => void;
  /** A session of what is left for today. */
  readonly onMore: (tasks: readonly Task[]) => void;
  readonly onBack: () => void;
  readonly onExercises: () => void;
}

/** The result of a session: what was missed, why, and what to do now. */
export interface EndView {
  readonly element: HTMLElement;
  start(): void;
  /** What could be asked next, and when the rest comes back: once all answers are written. */
  show(more: readonly Task[], exercises: number, forecast: HTMLElement | undefined): void;
}

export function makeEndView(
  session: Session,
  title: string | undefined,
  words: PracticeWords,
  { onAgain, onMore, onBack, onExercises }: EndEvents,
): EndView {
  const { practice } = words;
  const { outcomes, tasks } = session;
  const missed = outcomes.filter(({ how }) => how === 'wrong' || how === 'shown');
  const heading = focusable(make('h1', '', resultOf(outcomes, missed.length, words)));
  const strip = makeStrip(words);
  fillStrip(strip, session, words);
  const about = title === undefined ? practice.title : fill(practice.about, { title });
  const acts = makeActs();
  const more = make('div', 'practice-coming');
  const columns = make('div', 'practice-columns');
  if (missed.length > 0) columns.append(missedSection(session, missed, words));
  columns.append(more);
  const unasked = tasks.filter(({ show, graded, notBefore }) => !show && !graded && notBefore);
  const whole = make(
    'section',
    'practice-end',
    make('p', 'practice-about', about),
    heading,
    strip,
    ...(unasked.length > 0 ? [make('p', '', counted(practice.seen, unasked.length))] : []),
    acts.element,
    columns,
  );
  const again = missed.map(({ position }) => ({ position }));

  function showActs(next: readonly Task[], exercises = 0): void {
    const forward: Act[] = [];
    const add = (form: Counted, count: number, run: () => void) => {
      if (count > 0) forward.push({ words: counted(form, count), run });
    };
    add(practice.again, again.length, () => onAgain(again));
    add(practice.more, next.length, () => onMore(next));
    add(practice.toExercises, exercises, onExercises);
    // First, since it is there from the start: what is known later comes behind it.
    acts.show([{ words: practice.back, run: onBack }, ...forward], forward.length > 0 ? 1 : 0);
  }
  showActs([]);
  return {
    element: whole,
    start: () => heading.focus(),
    show(next, exercises, forecast) {
      showActs(next, exercises);
      more.replaceChildren(...(forecast ? [forecast] : []));
    },
  };
}

function resultOf(outcomes: readonly Outcome[], missed: number, { practice }: PracticeWords) {
  const all = outcomes.length;
  if (all === 0) return practice.answeredNone;
  if (missed === 0) return counted(practice.allFromMemory, all);
  const right = new Intl.NumberFormat(document.documentElement.lang).format(all - missed);
  return fill(counted(practice.fromMemory, all), { right });
}

function missedSection(
  session: Session,
  missed: readonly Outcome[],
  words: PracticeWords,
): HTMLElement {
  const { practice } = words;
  const list = element('ul', { class: 'practice-missed', role: 'list' });
  for (const outcome of missed) {
    const step = adviceStep(session.course, outcome.position);
    if (step === undefined) continue;
    const note = noteOf(session, step);
    const why = make('span', 'quiet', ...whatHappened(session, outcome, words));
    const said = note === undefined ? [why] : [note, make('br', ''), why];
    list.append(positionCard(session.course, step, outcome.turn, words, ...said));
  }
  return make('section', '', make('h2', '', counted(practice.lookAgain, missed.length)), list);
}

/** What the reader tried, and what the course says of that. */
function whatHappened(
  session: Session,
  { position, how, turn, tried }: Outcome,
  words: PracticeWords,
): (string | Node)[] {
  const { practice } = words;
  const again = practice.tomorrowAgain;
  if (tried === undefined || how !== 'wrong') return [`${practice.youWereShown} ${again}`];
  const here = session.course.table.positions[position];
  const move = here && moveOf(here, tried);
  const note = move && noteOf(session, { from: position, move });
  const played = fill(practice.youPlayed, { move: inWords(turn, tried, words) });
  return [`${played} `, ...(note ? [note, ' '] : []), again];
}
