/** The script of the practice page. */
import { givenNotes, givenTable } from '../../lookup/index.ts';
import { wordsOf } from '../board/board-words.ts';
import { counted } from '../counted.ts';
import { make } from '../element.ts';
import { adoptKnown } from './adopt-known.ts';
import { answeredOn } from './answered-on.ts';
import { chosenChapters, rememberChapters } from './chosen-chapters.ts';
import { dayOf } from './day.ts';
import { makeEndView } from './end-view.ts';
import { loadProgress } from './load-progress.ts';
import { practiceCourse } from './practice-course.ts';
import { makeProgressFile } from './progress-file.ts';
import { recordAnswer } from './record-answer.ts';
import { saveFile } from './save-file.ts';
import { begin, type Outcome } from './session.ts';
import { makeSessionView, type SessionView } from './session-view.ts';
import { makeStartView } from './start-view.ts';
import { openStore, type Store } from './store.ts';
import { makeTroubleNotice } from './trouble-notice.ts';
import { whenSeenAgain } from './when-seen-again.ts';

const place = document.getElementById('practice');
if (place !== null) void startPractice(place);

async function startPractice(place: HTMLElement): Promise<void> {
  const words = wordsOf(place, 'practice');
  const { practice } = words;
  const table = givenTable();
  const course = practiceCourse(table, givenNotes());
  const notice = makeTroubleNotice(practice);
  const stand = make('div', '');
  place.replaceChildren(notice.element, stand);

  let session: SessionView | undefined;
  /** The positions that this session is to ask. */
  let asked: ReadonlySet<number> = new Set();
  const store: Store = openStore(table.course, () => void refresh());

  const start = makeStartView(course, words, chosenChapters(course), {
    onChapters: (chapters) => rememberChapters(course, chapters),
    onBegin: (tasks, chapters) => {
      // Asked for once there is something to lose; the browser decides, perhaps without a word.
      void navigator.storage?.persist?.().catch(() => false);
      asked = new Set(tasks.map(({ position }) => position));
      session = makeSessionView(begin(course, tasks, chapters), words, {
        onOutcome: (outcome) => void keep(outcome),
        onEnd: (ended) => {
          session = undefined;
          const end = makeEndView(ended, words, async () => {
            await showStart();
            start.start();
          });
          showIn('ended', end.element);
          end.start();
        },
      });
      showIn('playing', session.element);
      session.start();
    },
    onSave: async () => {
      const text = makeProgressFile(table, (await store.all()).values(), Date.now());
      saveFile(`${table.course}-practice.json`, text);
    },
    onLoad: load,
    onForget: async () => {
      const isForgotten = await store.forget();
      if (isForgotten) start.say('');
      await refresh();
      return isForgotten ? practice.forgotten : practice.notForgotten;
    },
  });

  function showIn(stage: 'start' | 'playing' | 'ended', element: HTMLElement): void {
    document.body.dataset.practice = stage;
    stand.replaceChildren(element);
    scrollTo({ top: 0 });
  }

  async function showStart(): Promise<void> {
    await refresh();
    showIn('start', start.element);
  }

  async function keep(outcome: Outcome): Promise<void> {
    await recordAnswer(outcome, course, store);
    notice.show(store.trouble);
  }

  async function load(file: File): Promise<string> {
    const message = await loadProgress(file, course, store, practice);
    await refresh();
    return message;
  }

  async function adopt(): Promise<void> {
    const count = await adoptKnown(course, store);
    if (count === 0) return;
    start.say(counted(practice.adopted, count));
    await refresh();
  }

  async function refresh(): Promise<void> {
    const progress = await store.all();
    const today = dayOf(Date.now());
    notice.show(store.trouble);
    start.show(progress, today);
    session?.answeredElsewhere(answeredOn(today, asked, course, progress));
  }

  // The day may have changed, or another tab has practised.
  whenSeenAgain(() => void refresh());
  // The first sight of the page does not wait long for it.
  await Promise.race([adopt(), new Promise((resolve) => setTimeout(resolve, 1500))]);
  await showStart();
}
