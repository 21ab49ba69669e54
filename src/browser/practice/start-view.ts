import { fill } from '../../contract/sentence.ts';
import type { PracticeWords } from '../../contract/words.ts';
import { counted } from '../counted.ts';
import { make, makeButton } from '../element.ts';
import { focusable } from './focusable.ts';
import { type KeepingEvents, makeKeeping } from './keeping.ts';
import { itemsOf, type Progress, restingOf, todayOf } from './overview.ts';
import { makeOverviewTable } from './overview-table.ts';
import type { PracticeCourse } from './practice-course.ts';
import type { Task } from './session.ts';

/** So many new moves are learnt in one session. */
const newAtOnce = 8;

/** The page between sessions: what could be done, what is known, where it is kept. */
export interface StartView {
  readonly element: HTMLElement;
  show(progress: Progress, today: number): void;
  /** Says what was done unasked; an empty text takes it back. */
  say(text: string): void;
  /** Puts the focus at the top. */
  start(): void;
}

export interface StartEvents extends KeepingEvents {
  readonly onBegin: (tasks: readonly Task[], chapters: ReadonlySet<number>) => void;
  readonly onChapters: (chapters: ReadonlySet<number>) => void;
}

export function makeStartView(
  course: PracticeCourse,
  words: PracticeWords,
  chosen: ReadonlySet<number>,
  { onBegin, onChapters, ...keepingEvents }: StartEvents,
): StartView {
  const { practice } = words;
  let chapters = chosen;
  let due: readonly Task[] = [];
  let fresh: readonly Task[] = [];
  let shown: { progress: Progress; today: number } | undefined;

  const invitation = focusable(make('p', 'practice-today'));
  invitation.setAttribute('role', 'status');
  const beginDue = makeButton('', () => onBegin(due, chapters));
  const beginNew = makeButton('', () => onBegin(fresh, chapters));
  const begin = make('p', 'practice-onward', beginDue, beginNew);
  const notice = make('p', 'practice-told');
  notice.setAttribute('role', 'status');
  notice.hidden = true;
  const table = makeOverviewTable(course, words, chosen, (next) => {
    chapters = next;
    onChapters(next);
    update();
  });
  const resting = make('p', 'practice-resting');
  const keeping = makeKeeping(words, keepingEvents);
  const help = make('details', 'practice-how', make('summary', '', practice.help));
  for (const text of practice.helpText) help.append(make('p', '', text));
  const element = make(
    'div',
    'practice-start',
    invitation,
    notice,
    begin,
    help,
    table.element,
    resting,
    keeping,
  );

  function update(): void {
    if (shown === undefined) return;
    const { progress, today } = shown;
    const items = itemsOf(course, chapters);
    const day = todayOf(items, progress, today);
    due = day.due;
    fresh = day.fresh.slice(0, newAtOnce);
    const sentences: string[] = [];
    if (items.length === 0) sentences.push(practice.noneChosen);
    else if (day.fresh.length === items.length) {
      sentences.push(fill(practice.untouched, { moves: counted(practice.moves, items.length) }));
    } else {
      sentences.push(due.length === 0 ? practice.nothingDue : counted(practice.due, due.length));
      if (day.changed > 0) sentences.push(counted(practice.changed, day.changed));
      const unseen = day.fresh.length;
      sentences.push(unseen === 0 ? practice.allSeen : counted(practice.fresh, unseen));
      const ahead = { tomorrow: String(day.tomorrow), week: String(day.week) };
      if (day.week > 0) sentences.push(fill(practice.ahead, ahead));
    }
    const text = sentences.join(' ');
    // Said again, it would be read out again.
    if (invitation.textContent !== text) invitation.textContent = text;
    beginDue.textContent = counted(practice.beginDue, due.length);
    beginDue.hidden = due.length === 0;
    beginNew.textContent = counted(practice.beginNew, fresh.length);
    beginNew.hidden = fresh.length === 0;
    const rests = restingOf(course, progress);
    resting.hidden = rests === 0;
    resting.textContent = rests === 0 ? '' : counted(practice.resting, rests);
    table.show(progress, today);
  }

  return {
    element,
    show(progress, today) {
      shown = { progress, today };
      update();
    },
    say(text) {
      notice.textContent = text;
      notice.hidden = text === '';
    },
    start: () => invitation.focus(),
  };
}
