import type { CourseExercise } from '../../contract/course-exercises.ts';
import { readPracticeAim } from '../../contract/practice-address.ts';
import type { PracticeWords } from '../../contract/words.ts';
import { counted } from '../counted.ts';
import { make } from '../element.ts';
import { forgetResults, resultsOf } from '../exercise/results.ts';
import { browserKeeper, openOwnStore } from '../free/own-store.ts';
import { type Subject, subjectOf } from './session/aim.ts';
import { answeredOn } from './session/answered-on.ts';
import { chosenChapters, rememberChapters } from './session/chosen-chapters.ts';
import { dayOf } from './session/day.ts';
import { loadExercises, stillToFind } from './session/exercises.ts';
import { forecastOf } from './session/forecast.ts';
import { leaveForecast } from './session/leave-forecast.ts';
import { itemsOf, type Progress } from './session/overview.ts';
import { type Plan, planOf, tasksFor } from './session/plan.ts';
import type { PracticeCourse } from './session/practice-course.ts';
import { begin, type Outcome, type Session, type Task } from './session/session.ts';
import { adoptKnown } from './store/adopt-known.ts';
import { loadProgress } from './store/load-progress.ts';
import { makeProgressFile } from './store/progress-file.ts';
import { recordAnswer } from './store/record-answer.ts';
import { saveFile } from './store/save-file.ts';
import { openStore, type Store } from './store/store.ts';
import { makeEndView } from './view/end-view.ts';
import { makeExerciseView } from './view/exercise-view.ts';
import { forecastTable } from './view/forecast-table.ts';
import { makeSessionView, type SessionView } from './view/session-view.ts';
import { makeStartView, type StartView } from './view/start-view.ts';
import { makeTroubleNotice } from './view/trouble-notice.ts';
import { whenSeenAgain } from './view/when-seen-again.ts';

/** Fills the page of practice, and leads from one view to the next. */
export async function startPractice(
  place: HTMLElement,
  course: PracticeCourse,
  words: PracticeWords,
): Promise<void> {
  await new Practice(place, course, words).open();
}

class Practice {
  /** What the build has told of the page. */
  readonly #place: HTMLElement;
  readonly #course: PracticeCourse;
  readonly #words: PracticeWords;
  readonly #store: Store;
  readonly #stand = make('div', '');
  readonly #notice: ReturnType<typeof makeTroubleNotice>;
  readonly #start: StartView;
  #session: SessionView | undefined;
  /** The positions that this session is to ask. */
  #asked: ReadonlySet<number> = new Set();
  #chapters: ReadonlySet<number>;
  /** What the address names; absent for the whole course. */
  #named: Subject | undefined;

  constructor(place: HTMLElement, course: PracticeCourse, words: PracticeWords) {
    this.#place = place.closest<HTMLElement>('[data-words]') ?? place;
    this.#course = course;
    this.#words = words;
    this.#notice = makeTroubleNotice(words.practice);
    this.#store = openStore(course.table.course, () => void this.#refresh());
    this.#chapters = chosenChapters(course);
    this.#start = makeStartView(course, words, this.#chapters, {
      onChapters: (chapters) => {
        this.#chapters = chapters;
        rememberChapters(course, chapters);
        void this.#refresh();
      },
      onBegin: (tasks) => this.#begin(tasks),
      onSave: () => void this.#save(),
      onLoad: (file) => this.#load(file),
      onForget: () => this.#forget(),
    });
    place.replaceChildren(this.#notice.element, this.#stand);
  }

  async open(): Promise<void> {
    // The day may have changed, or another tab has practised.
    whenSeenAgain(() => void this.#refresh());
    addEventListener('hashchange', () => {
      // What leads to a part of the page, as the link past its head does, ends no session.
      if (location.hash === '' || this.#addressed() !== undefined) void this.#followAddress();
    });
    // The first sight of the page does not wait long for it.
    await Promise.race([this.#adopt(), new Promise((resolve) => setTimeout(resolve, 1500))]);
    await this.#followAddress();
  }

  /** Who follows a link to a session wants to be asked; without anything to ask the page says so. */
  async #followAddress(): Promise<void> {
    this.#named = this.#addressed();
    const { plan, progress } = await this.#refresh();
    const tasks = this.#named?.exact ? tasksFor(this.#named.items, progress) : plan.tasks;
    if (this.#named !== undefined && tasks.length > 0) this.#begin(tasks);
    else this.#showIn('start', this.#start.element);
  }

  #addressed(): Subject | undefined {
    return subjectOf(this.#course, readPracticeAim(location.hash), this.#words);
  }

  get #subject(): Subject {
    const chapters = this.#chapters;
    return this.#named ?? { items: itemsOf(this.#course, chapters), chapters };
  }

  #begin(tasks: readonly Task[]): void {
    // Asked for once there is something to lose; the browser decides, perhaps without a word.
    void navigator.storage?.persist?.().catch(() => false);
    this.#asked = new Set(tasks.map(({ position }) => position));
    const { title, chapters } = this.#subject;
    this.#session = makeSessionView(begin(this.#course, tasks, chapters), title, this.#words, {
      onOutcome: (outcome) => void this.#keep(outcome),
      onEnd: (ended) => void this.#end(ended),
    });
    this.#showIn('playing', this.#session.element);
    this.#session.start();
  }

  async #end(ended: Session): Promise<void> {
    this.#session = undefined;
    const end = makeEndView(ended, this.#subject.title, this.#words, {
      onAgain: (tasks) => this.#begin(tasks),
      onMore: (tasks) => this.#begin(tasks),
      onBack: () => void this.#back(),
      onExercises: () => void this.#ask(left),
    });
    let left: readonly CourseExercise[] = [];
    this.#showIn('ended', end.element);
    end.start();
    const { plan, progress, today } = await this.#refresh();
    const coming = forecastOf(this.#subject.items, progress, today);
    const more = this.#named?.exact ? [] : plan.tasks;
    const all = await loadExercises(this.#place);
    const chapters = new Set(
      ended.met.flatMap((position) => this.#course.itemAt.get(position)?.chapters ?? []),
    );
    left = all === undefined ? [] : stillToFind(all, chapters, this.#course.table.course);
    end.show(more, left.length, forecastTable(coming, today, this.#words));
  }

  /** The first of some exercises, and then the others. */
  async #ask([exercise, ...others]: readonly CourseExercise[]): Promise<void> {
    const all = globalThis.courseExercises;
    if (exercise === undefined || all === undefined) return this.#back();
    const title = this.#course.table.chapters[exercise.chapter]?.title ?? '';
    const view = makeExerciseView(
      exercise,
      all,
      { title, words: this.#words },
      {
        onNext: others.length > 0 ? () => void this.#ask(others) : undefined,
        onEnd: () => void this.#back(),
      },
    );
    this.#showIn('exercise', view.element);
    await view.start();
  }

  async #back(): Promise<void> {
    if (location.hash !== '') history.replaceState(null, '', location.pathname);
    this.#named = undefined;
    await this.#refresh();
    this.#showIn('start', this.#start.element);
    this.#start.start();
  }

  #showIn(stage: 'start' | 'playing' | 'ended' | 'exercise', element: HTMLElement): void {
    document.body.dataset.practice = stage;
    this.#stand.replaceChildren(element);
    scrollTo({ top: 0 });
  }

  async #keep(outcome: Outcome): Promise<void> {
    await recordAnswer(outcome, this.#course, this.#store);
    this.#notice.show(this.#store.trouble);
  }

  async #save(): Promise<void> {
    const { table } = this.#course;
    const notes = openOwnStore(table.course, browserKeeper()).entries.values();
    const items = (await this.#store.all()).values();
    const text = makeProgressFile(table, items, Date.now(), notes, resultsOf(table.course));
    saveFile(`${table.course}-practice.json`, text);
  }

  async #load(file: File): Promise<string> {
    const message = await loadProgress(file, this.#course, this.#store, this.#words.practice);
    await this.#refresh();
    return message;
  }

  async #forget(): Promise<string> {
    const isForgotten = await this.#store.forget();
    if (isForgotten) {
      forgetResults(this.#course.table.course);
      this.#start.say('');
    }
    await this.#refresh();
    const { forgotten, notForgotten } = this.#words.practice;
    return isForgotten ? forgotten : notForgotten;
  }

  async #adopt(): Promise<void> {
    const count = await adoptKnown(this.#course, this.#store);
    if (count === 0) return;
    this.#start.say(counted(this.#words.practice.adopted, count));
    await this.#refresh();
  }

  async #refresh(): Promise<{ plan: Plan; progress: Progress; today: number }> {
    const progress = await this.#store.all();
    const now = Date.now();
    const today = dayOf(now);
    this.#notice.show(this.#store.trouble);
    const subject = this.#subject;
    const plan = planOf(this.#course, subject.items, progress, { today, now });
    this.#start.show({ subject, plan, progress, today });
    leaveForecast(this.#course, progress, today);
    const answered = answeredOn(today, this.#asked, this.#course, progress);
    this.#session?.answeredElsewhere(answered);
    return { plan, progress, today };
  }
}
