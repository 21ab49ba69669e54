import type { CourseTable } from '../../contract/course-table.ts';
import { fill } from '../../contract/sentence.ts';
import type { NotesWords } from '../../contract/words.ts';
import { drawBoardInPage } from '../../draw/page-board.ts';
import { positionOf } from '../../lookup/find.ts';
import { placeHref } from '../../lookup/place-href.ts';
import { element, make, makeButton } from '../element.ts';
import { describe } from '../words.ts';
import { keepLineFor } from './line-to-show.ts';
import { drawOwn } from './own-drawing.ts';
import type { OwnEntry } from './own-entry.ts';
import { drawingInWords } from './own-tools.ts';

/** What is kept at a position: its board, the way back to it, and what was written. */
export function noteCard(
  entry: OwnEntry,
  table: CourseTable,
  words: NotesWords,
  onDelete: () => void,
): HTMLElement {
  const { free } = words;
  const { key, label, bookmark, text, line } = entry;
  const view = table.side === 'black' ? 'black' : 'white';
  const [placement = ''] = key.split(' ');
  const turn = key.split(' ')[1] === 'b' ? 'black' : 'white';
  const board = make('div', 'own-board');
  const desc = describe(placement, words);
  board.innerHTML = drawBoardInPage({ placement, view, turn, title: label, desc });
  const svg = board.querySelector('svg');
  if (svg !== null) drawOwn(svg, entry, view);
  const link = element('a', { href: hrefOf(entry, table) }, label);
  link.addEventListener('click', () => keepLineFor(link.href, line));
  const remove = makeButton(free.delete, onDelete);
  remove.setAttribute('aria-label', `${free.delete}: ${label}`);
  const parts = [
    make('h3', '', link),
    ...(bookmark === true ? [make('p', 'own-ribbon', free.bookmark)] : []),
    ...(text === undefined ? [] : [make('p', 'own-note-text', text)]),
    ...(drawingInWords(entry, free) === ''
      ? []
      : [make('p', 'own-drawn', drawingInWords(entry, free))]),
    ...(line === undefined
      ? []
      : [make('p', 'own-drawn', fill(free.ownMoves, { moves: line.join(' ') }))]),
    make('p', 'own-ways', remove),
  ];
  return make('article', 'own-card', board, make('div', '', ...parts));
}

/** Where the position stands now; else where the reader's own line left the text. */
function hrefOf({ key, href }: OwnEntry, table: CourseTable): string {
  const index = positionOf(table, key);
  const place = index === undefined ? undefined : table.positions[index]?.at[0];
  if (index !== undefined && place !== undefined) return placeHref(table, index, place);
  return href === '' ? 'index.html' : href;
}
