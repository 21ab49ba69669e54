import type { PracticeWords } from '../../contract/words.ts';
import { make } from '../element.ts';
import { itemsOf, type Progress, type Tally, tallyOf } from './overview.ts';
import type { PracticeCourse } from './practice-course.ts';

/** What is known, a row a chapter, and which chapters are practised. */
export function makeOverviewTable(
  course: PracticeCourse,
  words: PracticeWords,
  chosen: ReadonlySet<number>,
  onChosen: (chapters: ReadonlySet<number>) => void,
): { readonly element: HTMLElement; show(progress: Progress, today: number): void } {
  const { practice } = words;
  const ticks = new Map<number, HTMLInputElement>();
  const rows = course.table.chapters.flatMap(({ title }, index) => {
    const items = itemsOf(course, new Set([index]));
    if (items.length === 0) return [];
    const tick = make('input', '');
    tick.type = 'checkbox';
    tick.checked = chosen.has(index);
    tick.addEventListener('change', () => {
      onChosen(
        new Set([...ticks].filter(([, { checked }]) => checked).map(([chapter]) => chapter)),
      );
    });
    ticks.set(index, tick);
    return [makeRow(make('label', '', tick, make('span', '', title)), items)];
  });
  const whole = makeRow(practice.whole, course.items);
  const heads = [
    practice.chapter,
    practice.known,
    practice.learning,
    practice.unseen,
    practice.dueNow,
  ];
  const head = make('tr', '');
  for (const text of heads) {
    const cell = make('th', '', text);
    cell.scope = 'col';
    head.append(cell);
  }
  const body = make('tbody', '', ...rows.map(({ element }) => element));
  const foot = make('tfoot', '', whole.element);
  const table = make(
    'table',
    '',
    make('thead', '', head),
    body,
    ...(rows.length > 1 ? [foot] : []),
  );
  const help = [practice.overviewHelp, ...(rows.length > 1 ? [practice.wholeHelp] : [])].join(' ');
  const heading = make('h2', '', practice.overview);
  const element = make('section', 'practice-overview', heading, table, make('p', 'quiet', help));
  return {
    element,
    show(progress, today) {
      for (const row of [...rows, whole]) row.show(tallyOf(row.items, progress, today));
    },
  };
}

function makeRow(name: string | Node, items: PracticeCourse['items']) {
  const head = make('th', '', name);
  head.scope = 'row';
  const share = shareLine();
  head.append(share.element);
  const cells = [0, 1, 2, 3].map(() => make('td', ''));
  const element = make('tr', '', head, ...cells);
  return {
    element,
    items,
    show(tally: Tally): void {
      const { known, learning, unseen, due } = tally;
      [known, learning, unseen, due].forEach((count, index) => {
        const cell = cells[index];
        if (cell) cell.textContent = String(count);
      });
      share.show(tally);
    },
  };
}

/** A line as long as the chapter, drawn over as far as it is known; the numbers say the same. */
function shareLine(): { readonly element: Element; show(tally: Tally): void } {
  const space = 'http://www.w3.org/2000/svg';
  const element = document.createElementNS(space, 'svg');
  element.setAttribute('class', 'practice-share');
  element.setAttribute('viewBox', '0 0 100 4');
  element.setAttribute('preserveAspectRatio', 'none');
  element.setAttribute('aria-hidden', 'true');
  const [all, seen, known] = ['all', 'seen', 'known'].map((name) => {
    const part = document.createElementNS(space, 'rect');
    part.setAttribute('class', name);
    part.setAttribute('height', '4');
    element.append(part);
    return part;
  });
  all?.setAttribute('width', '100');
  return {
    element,
    show(tally) {
      const width = (count: number) => String((100 * count) / Math.max(1, tally.all));
      seen?.setAttribute('width', width(tally.known + tally.learning));
      known?.setAttribute('width', width(tally.known));
    },
  };
}
