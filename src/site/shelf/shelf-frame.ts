import { type BuiltCourse, practicePage, type Shelf } from '../../contract/index.ts';
import { palettes, pieceSprite, stateSprite } from '../../draw/index.ts';
import { defaultColour } from '../../look/index.ts';
import { cardPath } from '../../render/index.ts';
import { type Strings, stringsFor } from '../../strings/index.ts';
import { readerWordsScript } from '../render/data-scripts.ts';
import { feedPath } from '../render/feed.ts';
import type { AssetPaths, CoursePage, SiteFrame } from '../site-data.ts';
import { splitTitle } from '../split-title.ts';
import { iconPath, touchIcon } from '../web-app/icons.ts';
import { folderOf } from './shelf-books.ts';

/** The frame of a shelf's own pages, in which each course stands where a chapter does. */
export function shelfFrame(
  shelf: Shelf,
  built: readonly BuiltCourse[],
  assets: AssetPaths,
): SiteFrame {
  const { title, language, notation, author, summary, licence, base } = shelf;
  const strings = stringsFor(language, notation);
  const site = shelf.site?.replace(/\/+$/, '');
  const sides = new Set(built.map(({ side }) => side));
  const [side = 'both'] = sides.size === 1 ? sides : [];
  const [first] = built;
  const hasNews = built.some(({ news }) => news.length > 0);
  return {
    // No course: nothing is kept by this name.
    course: '',
    ...{ language, title, side, notation, assets },
    ...splitTitle(title),
    ...(author !== undefined && { author }),
    ...(summary !== undefined && { summary }),
    ...(licence !== undefined && { licence }),
    ...(site !== undefined && { site }),
    ...(base !== undefined && { base }),
    offline: shelf.offline ?? true,
    card: cardPath(),
    icons: { tab: iconPath('icon.svg'), touch: iconPath(touchIcon.name) },
    cloth: { light: defaultColour('cover', 'light'), dark: defaultColour('cover', 'dark') },
    sheet: { light: palettes.light.paper, dark: palettes.dark.paper },
    sprite: pieceSprite() + stateSprite(),
    readerWords: readerWordsScript(strings).path,
    pages: shelfPages(built, strings),
    chapters: built.map((course) => ({
      file: `${folderOf(course)}index.html`,
      title: course.title,
      language: course.language,
    })),
    ...(site !== undefined && hasNews && { feed: feedPath }),
    settingsPage: first === undefined ? 'index.html' : `${folderOf(first)}signs.html`,
  };
}

/** The pages of a shelf that act over all its courses. */
function shelfPages(built: readonly BuiltCourse[], strings: Strings): CoursePage[] {
  const { compare, search } = strings.finding.pageNames;
  return [
    ...(isPractised(built)
      ? [{ file: practicePage, title: strings.practicePage, inHead: true }]
      : []),
    { file: 'compare.html', title: compare, inHead: true },
    { file: 'search.html', title: search, inHead: true },
  ];
}

/** Whether any of the courses asks a move. */
export function isPractised(built: readonly BuiltCourse[]): boolean {
  return built.some(({ moves }) => moves > 0);
}
