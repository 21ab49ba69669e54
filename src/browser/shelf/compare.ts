/** The script of the page that compares games with all courses of a shelf, one course after the other. */
import { dataOf } from '../../contract/attributes.ts';
import { fill } from '../../contract/sentence.ts';
import type { ShelfCourse } from '../../contract/shelf-table.ts';
import type { ShelfCompareWords } from '../../contract/words.ts';
import type { ComparedGame } from '../../lookup/games/types.ts';
import { wordsOf } from '../board/board-words.ts';
import { speak } from '../compare/compare-words.ts';
import { makeInput } from '../compare/input.ts';
import { makeProgress } from '../compare/progress.ts';
import { type Running, runComparison } from '../compare/run-comparison.ts';
import { make } from '../element.ts';
import { makeShelfResult, type ShelfCompared } from './compare-result.ts';
import { givenCourses, loadTable } from './load-course.ts';

const place = document.querySelector('#compare');
if (place instanceof HTMLElement) startComparing(place, wordsOf(place, 'shelfCompare'));

function startComparing(place: HTMLElement, words: ShelfCompareWords): void {
  const speech = speak(words, document.documentElement.lang);
  const page = place.closest<HTMLElement>('[data-worker]') ?? place;
  const { worker = '' } = dataOf('page', page);
  const courses = givenCourses(page);
  const status = make('p', 'compare-status');
  status.setAttribute('role', 'status');
  const progress = makeProgress(speech, () => {
    running?.stop();
    turn += 1;
    end([], '');
  });
  const result = make('div', '');
  let running: Running | undefined;
  /** Counts what was asked for: an earlier comparison ends when another begins. */
  let turn = 0;

  async function begin(blob: Blob): Promise<void> {
    running?.stop();
    turn += 1;
    const mine = turn;
    status.textContent = '';
    result.replaceChildren();
    progress.start(blob.size * courses.length);
    const compared: ShelfCompared[] = [];
    const said: string[] = [];
    for (const [index, course] of courses.entries()) {
      const outcome = await compareWith(course, blob, (bytes, games) =>
        progress.show(blob.size * index + bytes, games),
      );
      if (mine !== turn) return;
      if ('failure' in outcome) said.push(outcome.failure);
      else compared.push(outcome);
    }
    const count = compared[0]?.games.length ?? 0;
    const done = count === 0 ? words.noGames : speech.counted(words.done, count);
    end(compared, [...(compared.length > 0 ? [done] : []), ...said].join(' '));
  }

  function compareWith(
    course: ShelfCourse,
    blob: Blob,
    onRead: (bytes: number, games: number) => void,
  ): Promise<ShelfCompared | { readonly failure: string }> {
    return loadTable(course).then(
      (table) =>
        new Promise((resolve) => {
          const games: ComparedGame[] = [];
          running = runComparison(worker, table, blob, {
            onReport(report) {
              games.push(...report.games);
              onRead(report.bytes, games.length);
            },
            onEnd(failure) {
              if (failure === undefined) resolve({ course, table, games });
              else resolve({ failure: fill(words.failed, { reason: failure }) });
            },
          });
        }),
      () => ({ failure: fill(words.shelf.notLoaded, { course: course.title }) }),
    );
  }

  function end(compared: readonly ShelfCompared[], said: string): void {
    running = undefined;
    progress.end();
    status.textContent = said;
    if ((compared[0]?.games.length ?? 0) === 0) return;
    result.replaceChildren(makeShelfResult(compared, speech, words));
    const heading = result.querySelector('h2');
    heading?.focus({ preventScroll: true });
    heading?.scrollIntoView({ block: 'start' });
  }

  place.append(
    makeInput(words, '1.d4 d5 2.c4', (blob) => void begin(blob)),
    progress.element,
    status,
    result,
  );
}
