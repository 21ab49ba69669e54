/**
 * The parts of pages that a theme may have rules for, by `::part(name)`. The names are a promise to authors: what a
 * page is made of may change, and then the selector does. States that tell something by their colours (the move
 * that is on the board) are left out of a selector, so that no theme can hide them.
 */
import type { ColourName } from './defaults.ts';

export interface PagePart {
  readonly name: string;
  /** What it is, for the handbook. */
  readonly about: string;
  readonly selector: string;
  /** What its text is painted in, and on: a theme's own colours for it are held against these. */
  readonly ink: ColourName;
  readonly ground: ColourName;
}

function part(
  name: string,
  about: string,
  selector: string,
  ink: ColourName = 'ink',
  ground: ColourName = 'paper',
): PagePart {
  return { name, about, selector, ink, ground };
}

const shown = ':not([aria-current], :target)';

export const parts: readonly PagePart[] = [
  part('head', 'the line at the top of each page but the first', 'body:not(.contents) .top'),
  part('course-title', 'the course’s title in that line', 'body:not(.contents) .course-title'),
  part('foot', 'the lines at the end of each page', '.bottom', 'quiet'),
  part('cover', 'the cover on the first page', '.cover', 'on-cover', 'cover'),
  part('cover-title', 'the title on the cover', '.cover h1', 'on-cover', 'cover'),
  part(
    'cover-subtitle',
    'the second part of a title, on the cover',
    '.subtitle',
    'on-cover-quiet',
    'cover',
  ),
  part('cover-side', 'side and author on the cover', '.cover .side', 'on-cover-quiet', 'cover'),
  part('cover-summary', 'the summary on the cover', '.cover .cover-summary', 'on-cover', 'cover'),
  part('cover-button', 'the button on the cover', '.cover .act', 'on-label', 'label'),
  part('knows', 'what a student will know, below the cover', '.knows'),
  part('chapter-list', 'the list of chapters on the first page', '.chapters'),
  part('chapter-entry', 'a chapter in that list', '.chapters li'),
  part('chapter-entry-number', 'its number', '.chapter-number'),
  part('chapter-entry-title', 'its title', '.chapter-title'),
  part('also', 'what else the course has, at the end of the first page', '.also', 'ink', 'wash'),
  part('title', 'the title of a page', ':is(.chapter-head, .plain) h1'),
  part('chapter-number', 'the number above a chapter’s title', '.chapter-head .number', 'quiet'),
  part('summary', 'the summary below a chapter’s title', '.chapter-head .summary', 'quiet'),
  part('heading', 'a heading within a page', 'main :is(h2, h3, h4)'),
  part('text', 'the text of a chapter', 'article'),
  part('link', 'a link in text', `article a:not(.move, .act, .button)${shown}`),
  part('quotation', 'a quotation', 'article blockquote', 'quiet'),
  part('code', 'code', 'article :is(code, pre)'),
  part('table', 'a table', 'article table'),
  part('footnotes', 'the notes at the end of a chapter', '.footnotes'),
  part('moves', 'a block of moves', '.moves'),
  part('main-line', 'a move of the main line', `.moves > p > .move${shown}`),
  part('variation', 'a variation, in the text or in a list', ':is(.variation, .variations)'),
  part('diagram', 'a diagram with its caption', '.diagram'),
  part('caption', 'the caption of a diagram', '.diagram figcaption'),
  part('exercise', 'an exercise', '.exercise'),
  part('exercise-question', 'what an exercise asks', '.exercise-ask'),
  part('game', 'a whole game', '.game'),
  part('players', 'the players of a game', '.players'),
  part('pattern', 'a pattern', '.pattern'),
  part('board-side', 'the board beside the text, with what is below it', '.beside', 'ink', 'wash'),
  part('sections', 'the list of a chapter’s sections', `.sections a${shown}`, 'quiet'),
  part('chapter-end', 'the end of a chapter', '.chapter-end'),
  part('button', 'a button', ':is(button, .button):not(course-board *, .act)'),
  part(
    'main-button',
    'the one filled button of a page',
    '.act:not(.cover .act)',
    'on-accent',
    'accent',
  ),
];

const byName = new Map(parts.map((each) => [each.name, each]));

export function findPart(name: string): PagePart | undefined {
  return byName.get(name);
}
