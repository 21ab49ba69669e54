/** The script of the page that compares games: games are given, a worker compares, results are shown. */

import { dataOf } from '../../contract/attributes.ts';
import { fill } from '../../contract/sentence.ts';
import { firstMoves } from '../../lookup/first-moves.ts';
import type { ComparedGame } from '../../lookup/games/types.ts';
import { givenTable } from '../../lookup/given-table.ts';
import { wordsOf } from '../board/board-words.ts';
import { make } from '../element.ts';
import { type Speech, speak } from './compare-words.ts';
import { makeInput } from './input.ts';
import { makeProgress } from './progress.ts';
import { makeResult } from './result.ts';
import { type Running, runComparison } from './run-comparison.ts';

const place = document.querySelector('#compare');
if (place instanceof HTMLElement) {
  startComparing(place, speak(wordsOf(place, 'compare'), document.documentElement.lang));
}

function startComparing(place: HTMLElement, speech: Speech): void {
  const { words } = speech;
  const table = givenTable();
  const page = place.closest<HTMLElement>('[data-worker]');
  const script = page === null ? '' : (dataOf('page', page).worker ?? '');
  const status = make('p', 'compare-status');
  status.setAttribute('role', 'status');
  const progress = makeProgress(speech, () => end(speech.counted(words.stopped, games.length)));
  const result = make('div', '');
  let games: ComparedGame[] = [];
  let running: Running | undefined;

  function begin(blob: Blob): void {
    running?.stop();
    games = [];
    status.textContent = '';
    result.replaceChildren();
    progress.start(blob.size);
    running = runComparison(script, table, blob, {
      onReport(report) {
        games.push(...report.games);
        progress.show(report.bytes, games.length);
      },
      onEnd(failure) {
        const done = games.length === 0 ? words.noGames : speech.counted(words.done, games.length);
        end(failure === undefined ? done : fill(words.failed, { reason: failure }));
      },
    });
  }

  function end(said: string): void {
    running?.stop();
    running = undefined;
    progress.end();
    status.textContent = said;
    if (games.length === 0) return;
    result.replaceChildren(makeResult(games, table, speech));
    const heading = result.querySelector('h2');
    heading?.focus({ preventScroll: true });
    heading?.scrollIntoView({ block: 'start' });
  }

  const input = makeInput(words, firstMoves(table, words.letters), begin);
  place.append(input, progress.element, status, result);
}
