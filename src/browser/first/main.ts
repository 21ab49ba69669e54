/** The script of the first page: where the reader stopped, what is read, what is due; and its board, when it is touched. */
import { dataOf } from '../../contract/attributes.ts';
import {
  chapterProgressKey,
  dueIn,
  forecastKey,
  readChapterProgress,
} from '../../contract/forecast.ts';
import { readingKey, readKeptReading } from '../../contract/kept-reading.ts';
import { practicePage } from '../../contract/practice-address.ts';
import { fill } from '../../contract/sentence.ts';
import { stateMark } from '../../draw/state-marks.ts';
import { wordsOf } from '../board/board-words.ts';
import { counted } from '../counted.ts';
import { make } from '../element.ts';
import { keptText } from '../kept-text.ts';
import { loadScript } from '../load-script.ts';
import { dayOf } from '../practice/session/day.ts';

const main = document.querySelector<HTMLElement>('main');
if (main !== null) startFirstPage(main);

function startFirstPage(main: HTMLElement): void {
  const words = wordsOf(main, 'first').first;
  const { course = '' } = dataOf('course', document.body);
  const { board } = dataOf('page', main);
  const items = [...main.querySelectorAll<HTMLElement>('[data-chapter]')];
  const kept = readKeptReading(keptText(readingKey(course)));

  for (const item of items) {
    const all = Number(item.dataset.sections);
    const read = Math.min(all, kept.read[item.dataset.chapter ?? '']?.length ?? 0);
    if (all <= 1 || read === 0) continue;
    // How many there are is told with them.
    item.querySelector('.chapter-sections')?.replaceWith(...measure(read, all));
  }
  const today = dayOf(Date.now());
  const practised = readChapterProgress(keptText(chapterProgressKey(course)));
  for (const item of items) {
    const { known = 0, all = 0, due: days = '' } = practised.get(item.dataset.chapter ?? '') ?? {};
    const due = dueIn(days, today);
    const told = [
      ...(known > 0 ? [fill(words.knownOf, { known: String(known), all: String(all) })] : []),
      ...(due > 0 ? [counted(words.dueHere, due)] : []),
    ];
    for (const each of told)
      item.querySelector('.chapter-takes')?.append(' ', make('span', '', each));
  }
  const act = main.querySelector<HTMLAnchorElement>('.cover .act');
  const { last } = kept;
  if (act !== null && last && items.some(({ dataset }) => dataset.chapter === last.chapter)) {
    act.href = `${last.chapter}.html${last.at === '' ? '' : `#${encodeURIComponent(last.at)}`}`;
    act.textContent = act.dataset.again ?? '';
    const about = main.querySelector('.act-about');
    if (about !== null) about.textContent = fill(words.stopped, { title: last.title });
  }

  const due = dueIn(keptText(forecastKey(course)), today);
  if (act !== null && due > 0) {
    const line = make('p', 'cover-due');
    const link = make('a', '');
    link.href = practicePage;
    link.textContent = counted(words.due, due);
    line.innerHTML = stateMark('due');
    line.append(' ', link);
    act.parentElement?.after(line);
  }

  /** A sign for each section, and the same in words. */
  function measure(read: number, all: number): HTMLElement[] {
    const signs = make('span', 'measure');
    signs.setAttribute('aria-hidden', 'true');
    // Of a chapter with very many sections the words say enough.
    for (let section = 0; section < all && all <= 24; section += 1) {
      signs.append(make('i', section < read ? 'read' : ''));
    }
    const told = make('span', '');
    told.textContent = fill(words.read, { read: String(read), all: String(all) });
    return [signs, told];
  }

  const figure = main.querySelector<HTMLElement>('.key-position');
  if (figure !== null && board !== undefined) whenTouched(figure, board);
}

/** The moves of the course come when the board is touched: most readers only look at it. */
function whenTouched(figure: HTMLElement, script: string): void {
  const touches = ['pointerenter', 'pointerdown', 'focusin'] as const;
  const load = () => {
    for (const touch of touches) figure.removeEventListener(touch, load);
    // Without its moves the board is still a picture.
    loadScript(script).catch(() => {});
  };
  for (const touch of touches) figure.addEventListener(touch, load);
}
