import type { Element } from 'hast';
import { counted } from '../contract/index.ts';
import type { PatternBlock } from '../model/index.ts';
import type { SharedContext } from './context.ts';
import type { BoardNode, PlacesNode } from './document.ts';
import { element } from './hast.ts';
import { patternPlaces } from './pattern-places.ts';

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
  const board: BoardNode = {
    type: 'board',
    picture: { placement, view, marks: empty, title, desc },
  };
  const placesOf = (isReversed: boolean): PlacesNode => {
    const own = matches.filter(({ reversed }) => reversed === isReversed);
    return { type: 'places', chapters: patternPlaces(context, own, here) };
  };
  const count = counted(strings.patternCount, matches.length, strings.language);
  const isReversed = matches.some(({ reversed }) => reversed);
  const figcaption = element('figcaption', {}, [
    element('p', { className: ['pattern-title'] }, [title]),
    ...(empty.length > 0 ? [element('p', { className: ['legend'] }, [strings.patternLegend])] : []),
    element('p', { className: ['count'] }, [count]),
    placesOf(false),
    ...(isReversed
      ? [element('p', { className: ['count'] }, [strings.patternReversed]), placesOf(true)]
      : []),
  ]);
  const still = element('div', { className: ['still'] }, [board]);
  return element('figure', { className: ['pattern'], id }, [still, figcaption], {
    role: 'pattern',
  });
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
