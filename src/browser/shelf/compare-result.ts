import type { ShelfCourse } from '../../contract/shelf-table.ts';
import type { ShelfCompareWords } from '../../contract/words.ts';
import { findPlayer } from '../../lookup/games/find-player.ts';
import {
  type ComparedWith,
  type FollowedGame,
  followFurthest,
} from '../../lookup/games/follow-furthest.ts';
import type { Speech } from '../compare/compare-words.ts';
import { type GameListContext, headOf, sentenceOf } from '../compare/game-list.ts';
import { placesOf } from '../compare/places.ts';
import { makePlayerFilter } from '../compare/player-filter.ts';
import { brokenGames, resultSections } from '../compare/result.ts';
import { element, make } from '../element.ts';
import { inLanguageOf } from '../in-language-of.ts';
import { cappedList } from '../search/capped-list.ts';

/** Games compared with one course of the shelf. */
export interface ShelfCompared extends ComparedWith {
  readonly course: ShelfCourse;
}

const shownAtOnce = 20;

interface ShelfContext {
  readonly compared: readonly ShelfCompared[];
  /** By course. */
  readonly contexts: readonly GameListContext[];
  readonly speech: Speech;
  readonly words: ShelfCompareWords;
}

/** What games show against several courses: which each follows furthest, and then course by course. */
export function makeShelfResult(
  compared: readonly ShelfCompared[],
  speech: Speech,
  words: ShelfCompareWords,
): HTMLElement {
  const contexts = compared.map(({ table }) => ({ table, speech, places: placesOf(table, words) }));
  const context = { compared, contexts, speech, words };
  const [first] = compared;
  const games = first?.games ?? [];
  const body = make('div', '');
  const show = (name: string): boolean => {
    const followed = followFurthest(compared, name);
    body.replaceChildren(...(followed.length > 0 ? sections(followed, name !== '', context) : []));
    return followed.length > 0;
  };
  const found = findPlayer(games);
  show(found?.name ?? '');
  const heading = make('h2', '', words.result);
  heading.tabIndex = -1;
  // Whose games they are is asked for both sides: each course then takes those of its own.
  const bothSides = first && { ...first.table, side: 'both' as const };
  const filter = bothSides && makePlayerFilter(games, bothSides, speech, found, show);
  return make('section', 'compare-result', [heading, ...(filter ? [filter] : []), body]);
}

function sections(
  followed: readonly FollowedGame[],
  isOne: boolean,
  context: ShelfContext,
): HTMLElement[] {
  const { compared, contexts, words, speech } = context;
  const [anyContext] = contexts;
  const whole = followed.filter(({ game }) => game.kind === 'met' || game.kind === 'apart');
  const list = cappedList(
    whole,
    {
      step: shownAtOnce,
      more: words.shelf.more,
      list: 'games-compared',
    },
    (each) => gameOf(each, context),
  );
  const byCourse = compared.flatMap((each, index) => {
    const own = whole.filter(({ courses }) => courses.includes(index));
    const games = own.flatMap(
      ({ game }) => each.games.find(({ number }) => number === game.number) ?? [],
    );
    const courseContext = contexts[index];
    if (games.length === 0 || courseContext === undefined) return [];
    return [
      make(
        'section',
        'in-course',
        make('h3', '', courseLink(each.course)),
        make('p', 'followed', speech.counted(words.shelf.followed, games.length)),
        ...resultSections(games, { otherSide: 0, isOne, level: 4, isListed: true }, courseContext),
      ),
    ];
  });
  return [
    figures(followed, context),
    ...(anyContext === undefined
      ? []
      : brokenGames(
          followed.map(({ game }) => game),
          anyContext,
        )),
    ...(whole.length > 0 ? [make('h3', '', words.list), ...(list as HTMLElement[])] : []),
    ...byCourse,
  ];
}

/** A game, and below it each course that it follows furthest: where it left it, with the way there. */
function gameOf(
  { game, courses }: FollowedGame,
  { compared, contexts, speech, words }: ShelfContext,
): HTMLElement[] {
  const told = courses.flatMap((index) => {
    const each = compared[index];
    const own = each?.games.find(({ number }) => number === game.number);
    const context = contexts[index];
    if (each === undefined || own === undefined || context === undefined) return [];
    const sentence = sentenceOf(own, context);
    sentence.prepend(courseLink(each.course), ': ');
    return [sentence];
  });
  return [headOf(game, speech), ...(told.length > 0 ? told : [make('p', '', words.shelf.never)])];
}

function courseLink(course: ShelfCourse): HTMLElement {
  return element(
    'a',
    { href: `${course.at}index.html`, ...inLanguageOf(course) },
    course.shortTitle,
  );
}

/** How many games there are, and how many follow each course furthest. */
function figures(
  followed: readonly FollowedGame[],
  { compared, speech, words }: ShelfContext,
): HTMLElement {
  const { figure } = speech;
  const row = (name: string | Node, count: number) =>
    make('div', '', [make('dt', '', name), make('dd', '', figure(count))]);
  const none = followed.filter(
    ({ game, courses }) => courses.length === 0 && (game.kind === 'met' || game.kind === 'apart'),
  ).length;
  const courses = compared.flatMap(({ course }, index) => {
    const count = followed.filter((each) => each.courses.includes(index)).length;
    return count === 0
      ? []
      : [row(element('span', inLanguageOf(course), course.shortTitle), count)];
  });
  return make('dl', 'figures', [
    row(words.figures.games, followed.length),
    ...courses,
    ...(none > 0 ? [row(words.shelf.none, none)] : []),
  ]);
}
