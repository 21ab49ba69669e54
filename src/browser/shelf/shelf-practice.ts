import type { ShelfCourse } from '../../contract/shelf-table.ts';
import type { ShelfPracticeWords } from '../../contract/words.ts';
import { make } from '../element.ts';
import { answeredOn } from '../practice/session/answered-on.ts';
import { dayOf } from '../practice/session/day.ts';
import { leaveForecast } from '../practice/session/leave-forecast.ts';
import { most } from '../practice/session/plan.ts';
import { begin, type Outcome, type Session, type Task } from '../practice/session/session.ts';
import { recordAnswer } from '../practice/store/record-answer.ts';
import { makeEndView } from '../practice/view/end-view.ts';
import { forecastTable } from '../practice/view/forecast-table.ts';
import { makeSessionView, type SessionView } from '../practice/view/session-view.ts';
import { makeTroubleNotice } from '../practice/view/trouble-notice.ts';
import { whenSeenAgain } from '../practice/view/when-seen-again.ts';
import { dueToday, placesOf } from './due-today.ts';
import { type KeptCourse, lookAt, openCourses } from './known-courses.ts';
import type { MergedCourse } from './merge-courses.ts';
import { comingOver, makeShelfStart, type ShelfStartData } from './shelf-start.ts';

/**
 * Practice over all courses of a shelf. Each course has its own database and its own days, as its own page of practice
 * has them; only the session is one.
 */
export class ShelfPractice {
  readonly #words: ShelfPracticeWords;
  readonly #courses: readonly KeptCourse[];
  readonly #stand = make('div', '');
  readonly #notice: ReturnType<typeof makeTroubleNotice>;
  readonly #start: ReturnType<typeof makeShelfStart>;
  #session: SessionView | undefined;
  /** The courses of the session: those that are loaded may meanwhile be more. */
  #merged: MergedCourse | undefined;
  /** What the session asks, by its positions. */
  #asked: ReadonlySet<number> = new Set();

  constructor(place: HTMLElement, courses: readonly ShelfCourse[], words: ShelfPracticeWords) {
    this.#words = words;
    this.#notice = makeTroubleNotice(words.practice);
    this.#courses = openCourses(courses, () => void this.#refresh());
    this.#start = makeShelfStart(
      this.#courses.map(({ shelved }) => shelved),
      words,
      (data, tasks) => this.#begin(data, tasks),
    );
    place.replaceChildren(this.#notice.element, this.#stand);
  }

  async open(): Promise<void> {
    // The day may have changed, or another tab has practised.
    whenSeenAgain(() => void this.#refresh());
    this.#showIn('start', this.#start.element);
    await this.#refresh();
  }

  #begin(data: ShelfStartData, tasks: readonly Task[]): void {
    // Asked for once there is something to lose; the browser decides, perhaps without a word.
    void navigator.storage?.persist?.().catch(() => false);
    const { course } = data.merged;
    this.#merged = data.merged;
    this.#asked = new Set(tasks.map(({ position }) => position));
    const session = begin(course, tasks, new Set(course.table.chapters.keys()));
    this.#session = makeSessionView(session, undefined, this.#words, {
      onOutcome: (outcome) => void this.#keep(outcome, data),
      onEnd: (ended) => void this.#end(ended, data),
    });
    this.#showIn('playing', this.#session.element);
    this.#session.start();
  }

  async #end(ended: Session, before: ShelfStartData): Promise<void> {
    this.#session = undefined;
    const end = makeEndView(ended, undefined, this.#words, {
      onAgain: (tasks) => this.#begin(before, tasks),
      onMore: (tasks) => this.#begin(now, tasks),
      onBack: () => void this.#back(),
      onExercises: () => void this.#back(),
    });
    let now = before;
    this.#showIn('ended', end.element);
    end.start();
    now = await this.#refresh();
    end.show(
      now.due.tasks.slice(0, most),
      0,
      forecastTable(comingOver(now), now.today, this.#words),
    );
  }

  async #back(): Promise<void> {
    await this.#refresh();
    this.#showIn('start', this.#start.element);
    this.#start.start();
  }

  #showIn(stage: 'start' | 'playing' | 'ended', element: HTMLElement): void {
    document.body.dataset.practice = stage;
    this.#stand.replaceChildren(element);
    scrollTo({ top: 0 });
  }

  /** In the course's own database, and in those of the courses that ask the same. */
  async #keep(outcome: Outcome, { due, merged, storeOf }: ShelfStartData): Promise<void> {
    for (const { part, position } of placesOf(outcome.position, due, merged)) {
      const store = storeOf(part.shelved);
      if (store === undefined) continue;
      await recordAnswer({ ...outcome, position }, part.course, store);
      this.#notice.show(store.trouble);
    }
  }

  async #refresh(): Promise<ShelfStartData> {
    const known = await lookAt(this.#courses);
    const now = Date.now();
    const today = dayOf(now);
    this.#notice.show(known.trouble);
    const practised = known.merged.parts.map((part) => ({
      part,
      progress: known.progressOf(part.shelved),
    }));
    for (const { part, progress } of practised) leaveForecast(part.course, progress, today);
    const data = { ...known, due: dueToday(practised, { today, now }), today };
    this.#start.show(data);
    this.#session?.answeredElsewhere(this.#answered(data));
    return data;
  }

  /** Those of the session that were answered today, in whichever tab. */
  #answered({ progressOf, today }: ShelfStartData): ReadonlySet<number> {
    const positions = (this.#merged?.parts ?? []).flatMap(({ shelved, course, first }) => {
      const own = [...this.#asked].filter((position) => course.itemAt.has(position - first));
      const asked = new Set(own.map((position) => position - first));
      const answered = answeredOn(today, asked, course, progressOf(shelved));
      return [...answered].map((position) => position + first);
    });
    return new Set(positions);
  }
}
