import type { CourseTable } from '../../contract/course-table.ts';
import { fill } from '../../contract/sentence.ts';
import type { ComparedGame } from '../../lookup/games/types.ts';
import { make } from '../element.ts';
import type { Speech } from './compare-words.ts';

/** So many names are proposed, those with most games. */
const mostNames = 300;

/** Asks whose games count; nothing stands for all. `onName` says whether anybody has that name. */
export function makePlayerFilter(
  games: readonly ComparedGame[],
  table: CourseTable,
  { words, side }: Speech,
  onName: (name: string) => boolean,
): HTMLElement {
  const names = document.createElement('datalist');
  names.id = 'players';
  names.append(
    ...playersOf(games).map((name) => {
      const option = document.createElement('option');
      option.value = name;
      return option;
    }),
  );
  const input = make('input', '');
  input.type = 'text';
  input.autocomplete = 'off';
  input.setAttribute('list', names.id);
  const label = make('label', '', [make('span', '', `${words.player} `), input]);
  const hint =
    table.side === 'both'
      ? words.playerHintBoth
      : fill(words.playerHint, { side: side(table.side) });
  const said = make('p', 'hint', hint);
  said.id = 'player-hint';
  said.setAttribute('aria-live', 'polite');
  input.setAttribute('aria-describedby', said.id);
  let chosen = '';
  input.addEventListener('input', () => {
    const name = input.value.trim();
    if (name === chosen) return;
    chosen = name;
    said.textContent = onName(name) ? hint : words.nobody;
  });
  return make('div', 'player', [label, names, said]);
}

function playersOf(games: readonly ComparedGame[]): string[] {
  const counts = new Map<string, number>();
  for (const { white, black } of games) {
    for (const name of [white, black]) {
      if (name !== '') counts.set(name, (counts.get(name) ?? 0) + 1);
    }
  }
  return [...counts]
    .sort((a, b) => b[1] - a[1] || a[0].localeCompare(b[0]))
    .slice(0, mostNames)
    .map(([name]) => name);
}
