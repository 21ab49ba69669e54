/** The script of a shelf's first page: where the reader stands in each course, and what is due over all. */
import { dataOf } from '../../contract/attributes.ts';
import { courseProgressKey, dueIn, forecastKey, readTally } from '../../contract/forecast.ts';
import { readingKey, readKeptReading } from '../../contract/kept-reading.ts';
import { practicePage } from '../../contract/practice-address.ts';
import { fill } from '../../contract/sentence.ts';
import type { ShelfWords } from '../../contract/words.ts';
import { stateMark } from '../../draw/state-marks.ts';
import { wordsOf } from '../board/board-words.ts';
import { counted } from '../counted.ts';
import { element, make } from '../element.ts';
import { keptText } from '../kept-text.ts';
import { dayOf } from '../practice/session/day.ts';
import { whenSeenAgain } from '../practice/view/when-seen-again.ts';

const main = document.querySelector<HTMLElement>('main');
if (main !== null) {
  tell(main);
  // The reader comes back from a course.
  whenSeenAgain(() => tell(main));
}

function tell(main: HTMLElement): void {
  const words = wordsOf(main, 'shelf');
  const today = dayOf(Date.now());
  const due = [...main.querySelectorAll<HTMLElement>('.book')].map((book) =>
    tellOf(book, words, today),
  );
  tellDue(main, due, words);
}

/** @returns how many moves are due in the course. */
function tellOf(book: HTMLElement, words: ShelfWords, today: number): number {
  const { course = '', at = '' } = dataOf('book', book);
  const told: HTMLElement[] = [];
  const { last } = readKeptReading(keptText(readingKey(course)));
  if (last !== undefined) {
    const hash = last.at === '' ? '' : `#${encodeURIComponent(last.at)}`;
    const href = `${at}${encodeURIComponent(last.chapter)}.html${hash}`;
    told.push(make('li', '', element('a', { href }, fill(words.goOn, { title: last.title }))));
  }
  const { known, all } = readTally(keptText(courseProgressKey(course)));
  if (known > 0) {
    told.push(make('li', '', fill(words.knownOf, { known: String(known), all: String(all) })));
  }
  const due = dueIn(keptText(forecastKey(course)), today);
  if (due > 0) {
    const item = make('li', '');
    item.innerHTML = stateMark('due');
    item.append(element('a', { href: at + practicePage }, counted(words.due, due)));
    told.push(item);
  }
  const list = book.querySelector<HTMLElement>('.book-standing');
  list?.replaceChildren(...told);
  list?.toggleAttribute('hidden', told.length === 0);
  return due;
}

function tellDue(main: HTMLElement, due: readonly number[], words: ShelfWords): void {
  const place = main.querySelector('.shelf-due');
  const all = due.reduce((sum, each) => sum + each, 0);
  place?.toggleAttribute('hidden', all === 0);
  if (place === null || all === 0) return;
  const courses = due.filter((each) => each > 0).length;
  place.replaceChildren(
    make('p', '', `${counted(words.dueToday, all)} ${counted(words.dueWithin, courses)}`),
    element('a', { class: 'act', href: practicePage }, words.practise),
  );
}
