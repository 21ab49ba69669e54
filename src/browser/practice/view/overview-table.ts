import { chapterSession } from '../../../contract/practice-address.ts';
import { fill } from '../../../contract/sentence.ts';
import type { PracticeWords } from '../../../contract/words.ts';
import { counted } from '../../counted.ts';
import { element, make } from '../../element.ts';
import { scoreOf } from '../session/mistakes.ts';
import { itemsOf, type Progress, tallyOf } from '../session/overview.ts';
import type { CourseItem, PracticeCourse } from '../session/practice-course.ts';
import { missedText } from './forecast-table.ts';
import { bar } from './svg.ts';

/** How each chapter stands, whether it is asked, and the way to a session of it alone. */
export function makeOverviewTable(
  course: PracticeCourse,
  words: PracticeWords,
  chosen: ReadonlySet<number>,
  onChosen: (chapters: ReadonlySet<number>) => void,
): { readonly element: HTMLElement; show(progress: Progress, today: number): void } {
  const { practice } = words;
  const ticks = new Map<number, HTMLInputElement>();
  const rows = course.table.chapters.flatMap(({ title, page }, index) => {
    const items = itemsOf(course, new Set([index]));
    if (items.length === 0) return [];
    const tick = element('input', {
      type: 'checkbox',
      'aria-label': fill(practice.include, { title }),
    });
    tick.checked = chosen.has(index);
    tick.addEventListener('change', () => {
      onChosen(
        new Set([...ticks].filter(([, { checked }]) => checked).map(([chapter]) => chapter)),
      );
    });
    ticks.set(index, tick);
    const link = element('a', { href: chapterSession(page.replace(/\.html$/, '')) }, title);
    return [makeRow(make('label', '', tick), link, items, practice)];
  });
  const whole = makeRow('', practice.whole, course.items, practice);
  const several = rows.length > 1;
  whole.element.classList.add('whole');
  const list = element(
    'ul',
    { role: 'list' },
    [...rows, ...(several ? [whole] : [])].map((row) => row.element),
  );
  const help = [practice.overviewHelp, ...(several ? [practice.wholeHelp] : [])].join(' ');
  return {
    element: make(
      'section',
      'practice-overview',
      make('h2', '', practice.overview),
      list,
      make('p', 'quiet', help),
    ),
    show(progress, today) {
      for (const row of [...rows, whole]) row.show(progress, today);
    },
  };
}

function makeRow(
  tick: string | Node,
  name: string | Node,
  items: readonly CourseItem[],
  practice: PracticeWords['practice'],
) {
  const share = make('div', 'practice-share');
  const words = make('p', 'practice-standing');
  const text = make('div', '', make('p', 'practice-name', name), share, words);
  return {
    element: make('li', '', tick, text),
    show(progress: Progress, today: number): void {
      const { all, known, met, due } = tallyOf(items, progress, today);
      const form = { known: new Intl.NumberFormat(document.documentElement.lang).format(known) };
      words.textContent = [
        fill(counted(practice.standing, all), form),
        ...(met > 0 ? [counted(practice.onTheWay, met)] : []),
        ...(due > 0 ? [counted(practice.seeToday, due)] : []),
        ...lately(items, progress, today, practice),
      ].join(', ');
      share.replaceChildren(
        bar(all, [
          ['met', known + met],
          ['known', known],
        ]),
      );
    },
  };
}

/** Mistakes of the last four weeks, and of the four before. */
function lately(
  items: readonly CourseItem[],
  progress: Progress,
  today: number,
  practice: PracticeWords['practice'],
): string[] {
  const now = scoreOf(items, progress, today - 27, today);
  const before = scoreOf(items, progress, today - 55, today - 28);
  if (now.misses === 0 && before.misses === 0) return [];
  return [
    missedText(practice.lately, now.misses, now.answers),
    ...(before.answers > 0 ? [missedText(practice.before, before.misses, before.answers)] : []),
  ];
}
