import { practicePage } from '../../contract/practice-address.ts';
import { fill } from '../../contract/sentence.ts';
import type { ShelfCourse } from '../../contract/shelf-table.ts';
import type { ShelfPracticeWords } from '../../contract/words.ts';
import { counted } from '../counted.ts';
import { element, make } from '../element.ts';
import { inLanguageOf } from '../in-language-of.ts';
import { type Coming, forecastOf } from '../practice/session/forecast.ts';
import { tallyOf } from '../practice/session/overview.ts';
import { most } from '../practice/session/plan.ts';
import type { Task } from '../practice/session/session.ts';
import { type Act, makeActs } from '../practice/view/acts.ts';
import { focusable } from '../practice/view/focusable.ts';
import { forecastTable } from '../practice/view/forecast-table.ts';
import { bar } from '../practice/view/svg.ts';
import type { DueToday } from './due-today.ts';
import type { KnownCourses } from './known-courses.ts';

/** How things stand, over all courses. */
export interface ShelfStartData extends KnownCourses {
  readonly due: DueToday;
  readonly today: number;
}

/** The page between sessions: what is due over all courses, how each stands, when the rest comes back. */
export function makeShelfStart(
  courses: readonly ShelfCourse[],
  words: ShelfPracticeWords,
  onBegin: (data: ShelfStartData, tasks: readonly Task[]) => void,
) {
  const { practice, shelf } = words;
  const heading = focusable(make('h1', '', practice.title));
  const invitation = make('p', 'practice-today');
  invitation.setAttribute('role', 'status');
  const acts = makeActs();
  const list = element('ul', { role: 'list' });
  const overview = make(
    'section',
    'practice-overview over-courses',
    make('h2', '', shelf.byCourse),
    list,
    make('p', 'quiet', shelf.byCourseHelp),
  );
  const coming = make('div', 'practice-coming');
  const columns = make('div', 'practice-columns', overview, coming);
  return {
    element: make('div', 'practice-start', heading, invitation, acts.element, columns),
    start: () => heading.focus(),
    show(data: ShelfStartData): void {
      const text = sentencesOf(data, words);
      // Said again, it would be read out again.
      if (invitation.textContent !== text) invitation.textContent = text;
      acts.show(actsFor(data, words, onBegin));
      list.replaceChildren(...courses.map((course) => rowOf(course, data, words)));
      const forecast = forecastTable(comingOver(data), data.today, words);
      coming.replaceChildren(...(forecast ? [forecast] : []));
    },
  };
}

function sentencesOf(
  { due, merged, missing }: ShelfStartData,
  { practice, shelf }: ShelfPracticeWords,
): string {
  const { tasks, twins, changed } = due;
  const begun = merged.parts.length + missing.length > 0;
  return [
    ...missing.map(({ title }) => fill(shelf.notLoaded, { course: title })),
    !begun
      ? shelf.notBegun
      : tasks.length === 0
        ? practice.nothingDue
        : counted(practice.due, tasks.length),
    ...(changed > 0 ? [counted(practice.changed, changed)] : []),
    ...(twins.size > 0 ? [counted(shelf.twins, twins.size)] : []),
  ].join(' ');
}

function actsFor(
  data: ShelfStartData,
  { practice, shelf }: ShelfPracticeWords,
  onBegin: (data: ShelfStartData, tasks: readonly Task[]) => void,
): Act[] {
  const { tasks } = data.due;
  if (tasks.length === 0) return [];
  const all = { words: counted(practice.begin, tasks.length), run: () => onBegin(data, tasks) };
  if (tasks.length <= most) return [all];
  const some = tasks.slice(0, most);
  const few = fill(shelf.some, { n: String(some.length) });
  return [all, { words: few, run: () => onBegin(data, some) }];
}

/** How a course stands, and the way to its own page of practice. */
function rowOf(
  course: ShelfCourse,
  { merged, progressOf, today }: ShelfStartData,
  { practice, shelf }: ShelfPracticeWords,
): HTMLElement {
  const name = element(
    'a',
    { href: course.at + practicePage, ...inLanguageOf(course) },
    course.title,
  );
  const part = merged.parts.find(({ shelved }) => shelved === course);
  if (part === undefined) {
    return element(
      'li',
      {},
      make('p', 'practice-name', name),
      make('p', 'practice-standing', shelf.unmet),
    );
  }
  const { all, known, met, due } = tallyOf(part.course.items, progressOf(course), today);
  const share = make('div', 'practice-share');
  share.append(
    bar(all, [
      ['met', known + met],
      ['known', known],
    ]),
  );
  const format = new Intl.NumberFormat(document.documentElement.lang);
  const told = [
    fill(counted(practice.standing, all), { known: format.format(known) }),
    ...(met > 0 ? [counted(practice.onTheWay, met)] : []),
    ...(due > 0 ? [counted(practice.seeToday, due)] : []),
  ].join(', ');
  return element(
    'li',
    {},
    make('p', 'practice-name', name),
    share,
    make('p', 'practice-standing', told),
  );
}

/** When moves come back, over all courses. */
export function comingOver({ merged, progressOf, today }: ShelfStartData): readonly Coming[] {
  const spans = new Map<number, Coming>();
  for (const { course, shelved } of merged.parts) {
    for (const each of forecastOf(course.items, progressOf(shelved), today)) {
      const count = (spans.get(each.from)?.count ?? 0) + each.count;
      spans.set(each.from, { ...each, count });
    }
  }
  return [...spans.values()].sort((a, b) => a.from - b.from);
}
