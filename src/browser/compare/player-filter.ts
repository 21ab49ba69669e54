import type { CourseTable } from '../../contract/course-table.ts';
import { fill } from '../../contract/sentence.ts';
import { type FoundPlayer, playersOf } from '../../lookup/games/find-player.ts';
import type { ComparedGame } from '../../lookup/games/types.ts';
import { make } from '../element.ts';
import type { Speech } from './compare-words.ts';

/** Names that are proposed, those with most games first. */
const mostNames = 300;

/**
 * Asks whose games count; nothing stands for all. `onName` says whether anybody has that name.
 * @param found stands there at first.
 */
export function makePlayerFilter(
  games: readonly ComparedGame[],
  table: CourseTable,
  { words, side, figure }: Speech,
  found: FoundPlayer | undefined,
  onName: (name: string) => boolean,
): HTMLElement {
  const names = document.createElement('datalist');
  names.id = 'players';
  names.append(
    ...playersOf(games)
      .slice(0, mostNames)
      .map(({ name }) => {
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
  const foundWords =
    found &&
    fill(words.playerFound, {
      name: found.name,
      n: figure(found.games),
      count: figure(games.length),
    });
  const said = make('p', 'hint', foundWords ?? hint);
  input.value = found?.name ?? '';
  said.id = 'player-hint';
  said.setAttribute('aria-live', 'polite');
  input.setAttribute('aria-describedby', said.id);
  let chosen = input.value;
  input.addEventListener('input', () => {
    const name = input.value.trim();
    if (name === chosen) return;
    chosen = name;
    said.textContent = onName(name) ? hint : words.nobody;
  });
  return make('div', 'player', [label, names, said]);
}
