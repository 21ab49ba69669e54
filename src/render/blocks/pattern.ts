import type { Element, ElementContent } from 'hast';
import { counted } from '../../contract/index.ts';
import type { PatternBlock } from '../../model/index.ts';
import { namedInWords, type SharedContext } from '../context.ts';
import type { BoardNode, PlacesNode } from '../document.ts';
import { element, linkTo, text } from '../hast.ts';
import { sanHtml } from '../notation.ts';
import { claimWords } from './claim-words.ts';
import { patternPlaces } from './pattern-places.ts';

/** Where a pattern is shown. */
export interface PatternSetting {
  readonly id: string;
  /** The reader's chapter; absent on other pages. */
  readonly here?: string;
  /** Whether its positions are shown elsewhere on the page. */
  readonly placesApart?: boolean;
  /** Its text; absent where the page leaves it to the chapter. */
  readonly text?: readonly ElementContent[];
}

/**
 * A pattern: its placement on a small board, what holds wherever it occurs, and every position of the course that has
 * it.
 */
export function renderPattern(
  context: SharedContext,
  block: PatternBlock,
  { id, here, placesApart = false, text: words = [] }: PatternSetting,
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
  const isReversed = matches.some(({ reversed }) => reversed);
  const places = [
    element('p', { className: ['count'] }, [
      counted(strings.patternCount, matches.length, strings.language),
    ]),
    placesOf(false),
    ...(isReversed
      ? [element('p', { className: ['count'] }, [strings.patternReversed]), placesOf(true)]
      : []),
  ];
  const figcaption = element('figcaption', {}, [
    element('p', { className: ['pattern-title'] }, [title]),
    ...(empty.length > 0 ? [element('p', { className: ['legend'] }, [strings.patternLegend])] : []),
    ...(words.length > 0 ? [element('p', { className: ['pattern-text'] }, words)] : []),
    ...whatHolds(context, block, here),
    ...(placesApart ? [] : places),
  ]);
  const still = element('div', { className: ['still'] }, [board]);
  return element('figure', { className: ['pattern'], id }, [still, figcaption], {
    role: 'pattern',
  });
}

/** The advice and claims of a pattern, and its exceptions. */
function whatHolds(
  { ask, strings, notation }: SharedContext,
  { advice, claims, except }: PatternBlock,
  here: string | undefined,
): Element[] {
  const moves = advice.map(({ san }) => element('span', {}, sanHtml(san, notation)));
  const words = claims.flatMap(({ argument }) => claimWords(argument, strings));
  const names = except.flatMap(({ name }) => {
    const named = ask('label', name);
    if (named === null) return [];
    const words = namedInWords(ask, named, strings, here);
    return [linkTo({ to: 'place', ref: named.ref }, 'position', [words])];
  });
  const line = (name: string, lead: string, content: readonly ElementContent[]) =>
    content.length === 0 ? [] : [element('p', { className: [name] }, [`${lead} `, ...content])];
  return [
    ...line('pattern-advice', strings.patternAdvice, between(moves, ` ${strings.patternOr} `)),
    ...line(
      'pattern-claims',
      strings.patternClaims,
      between(
        words.map((claim) =>
          'words' in claim
            ? element('span', {}, [claim.words])
            : element('code', {}, [claim.written]),
        ),
        '; ',
      ),
    ),
    ...line('pattern-except', strings.patternExcept, between(names, ', ')),
  ];
}

function between(elements: readonly Element[], separator: string): ElementContent[] {
  return elements.flatMap((each, index) => (index === 0 ? [each] : [text(separator), each]));
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
