import { practicePage } from '../../../contract/practice-address.ts';
import { type Counted, fill } from '../../../contract/sentence.ts';
import type { PracticeWords } from '../../../contract/words.ts';
import { counted } from '../../counted.ts';
import { element, make } from '../../element.ts';
import type { Subject } from '../session/aim.ts';
import { forecastOf } from '../session/forecast.ts';
import { type Progress, restingOf } from '../session/overview.ts';
import type { Plan } from '../session/plan.ts';
import type { PracticeCourse } from '../session/practice-course.ts';
import type { Task } from '../session/session.ts';
import { type Act, makeActs } from './acts.ts';
import { focusable } from './focusable.ts';
import { forecastTable } from './forecast-table.ts';
import { type KeepingEvents, makeKeeping } from './keeping.ts';
import { oftenMissed, weeksTable } from './mistakes-view.ts';
import { makeOverviewTable } from './overview-table.ts';

/** The page between sessions: what could be done, how things stand, where that is kept. */
export interface StartView {
  readonly element: HTMLElement;
  show(now: StartData): void;
  /** Says what was done unasked; an empty text takes it back. */
  say(text: string): void;
  start(): void;
}

export interface StartData {
  readonly subject: Subject;
  readonly plan: Plan;
  readonly progress: Progress;
  readonly today: number;
}

export interface StartEvents extends KeepingEvents {
  readonly onBegin: (tasks: readonly Task[]) => void;
  readonly onChapters: (chapters: ReadonlySet<number>) => void;
}

export function makeStartView(
  course: PracticeCourse,
  words: PracticeWords,
  chosen: ReadonlySet<number>,
  { onBegin, onChapters, ...keepingEvents }: StartEvents,
): StartView {
  const { practice } = words;
  const heading = focusable(make('h1', ''));
  const invitation = make('p', 'practice-today');
  invitation.setAttribute('role', 'status');
  const acts = makeActs();
  const wayOut = { href: practicePage, class: 'practice-whole' };
  const wholeCourse = element('a', wayOut, practice.wholeCourse);
  acts.element.append(wholeCourse);
  const notice = make('p', 'practice-notice');
  notice.setAttribute('role', 'status');
  notice.hidden = true;
  const table = makeOverviewTable(course, words, chosen, onChapters);
  const coming = make('div', 'practice-coming');
  const mistakes = make('div', 'practice-mistakes');
  const resting = make('p', 'practice-resting');
  const help = make('details', 'practice-how', make('summary', '', practice.help));
  for (const text of practice.helpText) help.append(make('p', '', text));
  const columns = make('div', 'practice-columns', table.element, coming);
  const whole = make('div', 'practice-start', heading, invitation, notice, acts.element, columns);
  whole.append(mistakes, resting, help, makeKeeping(words, keepingEvents));

  return {
    element: whole,
    show({ subject, plan, progress, today }) {
      const { title, items } = subject;
      heading.textContent = title === undefined ? practice.title : fill(practice.about, { title });
      const text = sentencesOf(subject, plan, practice);
      // Said again, it would be read out again.
      if (invitation.textContent !== text) invitation.textContent = text;
      acts.show(actsFor(plan, practice, onBegin), plan.tasks.length > 0 ? 0 : -1);
      wholeCourse.hidden = title === undefined;
      const forecast = forecastTable(forecastOf(items, progress, today), today, words);
      const weeks = weeksTable(items, progress, today, words);
      coming.replaceChildren(...[forecast, weeks].filter((part) => part !== undefined));
      const often = oftenMissed(course, items, progress, words);
      mistakes.replaceChildren(...(often ? [often] : []));
      const rests = restingOf(course, progress);
      resting.hidden = rests === 0;
      resting.textContent = rests === 0 ? '' : counted(practice.resting, rests);
      table.show(progress, today);
    },
    say(text) {
      notice.textContent = text;
      notice.hidden = text === '';
    },
    start: () => heading.focus(),
  };
}

/** What could be done today. */
function sentencesOf(
  { items, title }: Subject,
  { due, changed, unmet }: Plan,
  practice: PracticeWords['practice'],
): string {
  if (items.length === 0) return title === undefined ? practice.noneChosen : practice.nothingHere;
  if (unmet === items.length) return counted(practice.untouched, unmet);
  return [
    due === 0 ? practice.nothingDue : counted(practice.due, due),
    ...(changed > 0 ? [counted(practice.changed, changed)] : []),
    unmet === 0 ? practice.allMet : counted(practice.unmet, unmet),
  ].join(' ');
}

function actsFor(
  { tasks, back, ahead }: Plan,
  practice: PracticeWords['practice'],
  onBegin: (tasks: readonly Task[]) => void,
): Act[] {
  const acts: Act[] = [];
  const add = (form: Counted, asked: readonly Task[]) =>
    acts.push({ words: counted(form, asked.length), run: () => onBegin(asked) });
  if (tasks.length > 0) add(practice.begin, tasks);
  if (back.length > 0 && back.length < tasks.length) add(practice.beginBack, back);
  if (tasks.length === 0 && ahead.length > 0) add(practice.beginAhead, ahead);
  return acts;
}
