import type { CourseTable } from '../../contract/course-table.ts';
import { fill } from '../../contract/sentence.ts';
import { byPosition, type PositionRow } from '../../lookup/games/by-position.ts';
import { findPlayer } from '../../lookup/games/find-player.ts';
import type { ComparedGame } from '../../lookup/games/types.ts';
import { withPlayer } from '../../lookup/games/with-player.ts';
import { pageHref } from '../../lookup/place-href.ts';
import { element, make, makeButton } from '../element.ts';
import type { Speech } from './compare-words.ts';
import { type GameListContext, makeGameList } from './game-list.ts';
import { byChapter, practiseMissed } from './missed.ts';
import { placesOf } from './places.ts';
import { makePlayerFilter } from './player-filter.ts';
import { makePositionTable, type TableContext } from './position-table.ts';

/** Games listed at once; more are folded. */
const shortList = 10;

/** What students want most comes first: where they themselves left. */
const order = ['advised', 'aside', 'covered', 'known', 'ended'] as const;

/** All that the games show: sums, positions, the games one by one; also for one player only. */
export function makeResult(
  games: readonly ComparedGame[],
  table: CourseTable,
  speech: Speech,
): HTMLElement {
  const { words } = speech;
  const context = { table, speech, places: placesOf(table, words) };
  const body = make('div', '');
  const show = (name: string): boolean => {
    const mine = withPlayer(table, games, name);
    const found = mine.games.length + mine.otherSide > 0;
    if (!found) body.replaceChildren();
    else
      body.replaceChildren(...resultSections(mine.games, { ...mine, isOne: name !== '' }, context));
    return found;
  };
  const found = findPlayer(games);
  show(found?.name ?? '');
  const heading = make('h2', '', words.result);
  heading.tabIndex = -1;
  return make('section', 'compare-result', [
    heading,
    makePlayerFilter(games, table, speech, found, show),
    body,
  ]);
}

interface Looks {
  /** How many games with the other side do not count. */
  readonly otherSide: number;
  readonly isOne: boolean;
  readonly level?: 3 | 4;
  /** The games have been shown one by one already. */
  readonly isListed?: boolean;
}

/** What games show against one course: sums, positions, the games one by one. */
export function resultSections(
  games: readonly ComparedGame[],
  { otherSide, isOne, level = 3, isListed = false }: Looks,
  context: GameListContext,
): HTMLElement[] {
  const h = `h${level}` as const;
  const { table, speech, places } = context;
  const { words, figure } = speech;
  const rows = byPosition(table, games);
  const list = make('div', '');
  const listHeading = make(h, '', words.list);
  listHeading.tabIndex = -1;
  const listFold = element('details', {}, make('summary', '', listHeading), list);
  const counted = games.filter(({ kind }) => kind === 'met' || kind === 'apart');
  const showAll = () => {
    listHeading.textContent = words.list;
    list.replaceChildren(makeGameList(counted, context));
  };
  const onGames = (row: PositionRow) => {
    listHeading.textContent = fill(words.listHere, { position: places.inWords(row.exit) });
    const all = makeButton(words.allGames, () => {
      showAll();
      listHeading.focus();
    });
    list.replaceChildren(all, makeGameList(row.games, context));
    listFold.open = true;
    listHeading.focus();
    listHeading.scrollIntoView({ block: 'start' });
  };
  showAll();
  listFold.open = !isListed && counted.length <= shortList;
  const asides = byPosition(table, games, ({ aside }) => aside);
  const titles = isOne ? { ...words, advised: words.advisedYou, aside: words.asideYou } : words;
  const tables = order.flatMap((leaving) => {
    const some = leaving === 'aside' ? asides : rows.filter((row) => row.leaving === leaving);
    const by = some[0]?.by;
    if (some.length === 0) return [];
    const side = by === undefined ? '' : speech.side(by);
    const title = fill(titles[leaving], { side });
    const hint = make('p', 'hint', fill(words[`${leaving}Hint`], { side }));
    const heading = make(h, '', title);
    const shown = { ...context, onGames };
    if (leaving === 'advised' || leaving === 'aside') {
      return [make('section', '', [heading, hint, ...chapterTables(some, shown, title, level)])];
    }
    // Folded: the reader's own moves come first.
    const count = make('span', 'hint', ` ${figure(some.length)}`);
    return [
      make('details', '', [
        make('summary', '', [heading, count]),
        hint,
        makePositionTable(some, shown, title),
      ]),
    ];
  });
  const isStill = tables.length === 0 && games.some(({ kind }) => kind === 'met');
  const missed = [...rows.filter(({ leaving }) => leaving === 'advised'), ...asides];
  return [
    ...(isListed ? [] : [figures(games, otherSide, rows, speech)]),
    ...(missed.length > 0 ? [practiseMissed(missed, table, speech)] : []),
    ...(isListed ? [] : brokenGames(games, context)),
    ...(isStill ? [make('p', '', words.noLeaving)] : tables),
    ...(tables.length > 0 ? [make('p', 'hint', words.lastKnown)] : []),
    ...(counted.length > 0 ? [listFold] : []),
  ];
}

function chapterTables(
  rows: readonly PositionRow[],
  context: TableContext,
  title: string,
  level: 3 | 4,
): HTMLElement[] {
  const chapters = byChapter(rows, context.table);
  if (chapters.length < 2) return [makePositionTable(rows, context, title)];
  return chapters.flatMap((chapter) => [
    make(
      `h${level === 3 ? 4 : 5}`,
      '',
      element('a', { href: pageHref(context.table, chapter.page) }, chapter.title),
    ),
    makePositionTable(chapter.rows, { ...context, inChapter: true }, `${title}: ${chapter.title}`),
  ]);
}

/** The sums; what does not occur is left out. */
function figures(
  games: readonly ComparedGame[],
  otherSide: number,
  rows: readonly PositionRow[],
  { words, figure }: Speech,
): HTMLElement {
  const sum = (kind: ComparedGame['kind']) => games.filter((game) => game.kind === kind).length;
  const within = rows.filter(({ leaving }) => leaving === 'within');
  const sums = {
    games: games.length + otherSide,
    met: sum('met'),
    within: within.reduce((all, row) => all + row.games.length, 0),
    apart: sum('apart'),
    otherSide,
    empty: sum('empty'),
    variant: sum('variant'),
    broken: sum('broken'),
  };
  const always = new Set(['games', 'met', 'apart']);
  const shown = (Object.keys(sums) as (keyof typeof sums)[]).filter(
    (name) => always.has(name) || sums[name] > 0,
  );
  return make(
    'dl',
    'figures',
    shown.map((name) =>
      make('div', '', [make('dt', '', words.figures[name]), make('dd', '', figure(sums[name]))]),
    ),
  );
}

/** The games that do not count, by name. */
export function brokenGames(
  games: readonly ComparedGame[],
  context: GameListContext,
): HTMLElement[] {
  const { speech } = context;
  const broken = games.filter(({ kind }) => kind === 'broken' || kind === 'variant');
  if (broken.length === 0) return [];
  const details = make('details', 'broken-games', [
    make('summary', '', speech.counted(speech.words.broken, broken.length)),
    makeGameList(broken, context),
  ]);
  details.open = broken.length <= 3;
  return [details];
}
