import type { Element } from 'hast';
import { counted } from '../../contract/sentence.ts';
import { chapterAt, type PatternBlock } from '../../model/index.ts';
import type { SharedContext } from './context.ts';
import { element } from './hast.ts';
import { type PatternPlace, type PatternPlaces, patternPlaces } from './pattern-places.ts';

/** So many positions are told at once; the rest of a longer list is folded. */
const shownAtOnce = 12;

/**
 * A placement on a small board, and every position of the course that has it. `here` is the chapter
 * that the reader is in; absent on a page that is none.
 */
export function renderPattern(
  context: SharedContext,
  block: PatternBlock,
  id: string,
  here?: string,
): Element {
  const { strings } = context;
  const { placement, view, empty, matches, title } = block;
  const desc = [
    piecesInWords(context, block, 'white'),
    piecesInWords(context, block, 'black'),
    ...(empty.length > 0 ? [strings.patternEmpty(empty.join(' '))] : []),
  ].join(' ');
  const board = context.medium.board({ placement, view, marks: empty, title, desc });
  const plain = patternPlaces(
    context,
    matches.filter(({ reversed }) => !reversed),
    here,
  );
  const reversed = patternPlaces(
    context,
    matches.filter((match) => match.reversed),
    here,
  );
  return element('figure', { className: ['pattern'], id }, [
    element('div', { className: ['still'] }, [board]),
    element('figcaption', {}, [
      element('p', { className: ['pattern-title'] }, [title]),
      ...(empty.length > 0
        ? [element('p', { className: ['legend'] }, [strings.patternLegend])]
        : []),
      element('p', { className: ['count'] }, [
        counted(strings.patternCount, matches.length, strings.language),
      ]),
      ...list(context, plain, here),
      ...(reversed.length > 0
        ? [
            element('p', { className: ['count'] }, [strings.patternReversed]),
            ...list(context, reversed, here),
          ]
        : []),
    ]),
  ]);
}

function list(
  context: SharedContext,
  chapters: readonly PatternPlaces[],
  here: string | undefined,
): Element[] {
  const { strings, medium } = context;
  let room = shownAtOnce;
  const shown: Element[] = [];
  const folded: Element[] = [];
  let hidden = 0;
  const all = chapters.reduce((sum, { places }) => sum + places.length, 0);
  // A fold that would hide a place or two only hides them.
  if (all <= shownAtOnce + 3 || !medium.folds) room = all;
  for (const { chapter, places } of chapters) {
    const now = places.slice(0, room);
    const later = places.slice(room);
    room -= now.length;
    hidden += later.length;
    if (now.length > 0) shown.push(inChapter(context, chapter, now, here));
    if (later.length > 0) folded.push(inChapter(context, chapter, later, here));
  }
  if (hidden === 0) return shown;
  const summary = element('summary', {}, [strings.patternMore(hidden)]);
  return [...shown, element('details', {}, [summary, ...folded])];
}

function inChapter(
  context: SharedContext,
  chapter: string,
  places: readonly PatternPlace[],
  here: string | undefined,
): Element {
  const { course, strings } = context;
  const title = chapterAt(course, { chapter })?.title ?? '';
  const items = places.map(({ href, words, name }) =>
    element('li', {}, [
      element('a', { className: ['position-link'], href }, [name ?? words]),
      ...(name === undefined ? [] : [` ${words}`]),
    ]),
  );
  return element('div', { className: ['places'] }, [
    element('p', {}, [chapter === here ? strings.patternHere : strings.patternThere(title)]),
    element('ul', { role: 'list' }, items),
  ]);
}

function piecesInWords(
  { strings }: SharedContext,
  { pieces }: PatternBlock,
  color: 'white' | 'black',
): string {
  const named = pieces
    .filter((piece) => piece.color === color)
    .map(({ kind, square }) => `${strings.pieceNames[kind]} ${square}`);
  return `${strings[color]}: ${named.join(', ')}.`;
}
