import type { Element } from 'hast';
import type { Strings } from '../../strings/index.ts';
import type { ChapterPlaces, PatternPlace, PlacesNode } from '../document.ts';
import { element, linkTo } from '../hast.ts';

/** How many places are shown at once; the rest of a longer list is folded. */
const shownAtOnce = 8;

/** The positions of a pattern as lists, long ones folded. */
export function foldedPlaces({ chapters }: PlacesNode, strings: Strings): Element[] {
  const all = chapters.reduce((sum, { places }) => sum + places.length, 0);
  // Do not fold away only a place or two.
  let room = all <= shownAtOnce + 3 ? all : shownAtOnce;
  const shown: Element[] = [];
  const folded: Element[] = [];
  let hidden = 0;
  for (const { lead, places } of chapters) {
    const now = places.slice(0, room);
    const later = places.slice(room);
    room -= now.length;
    hidden += later.reduce((sum, { count }) => sum + count, 0);
    if (now.length > 0) shown.push(listed({ lead, places: now }, strings));
    if (later.length > 0) folded.push(listed({ lead, places: later }, strings));
  }
  if (hidden === 0) return shown;
  const summary = element('summary', {}, [strings.patternMore(hidden)]);
  return [...shown, element('details', {}, [summary, ...folded])];
}

function listed({ lead, places }: ChapterPlaces, strings: Strings): Element {
  const items = places.map((place) =>
    element('li', {}, [
      linkTo({ to: 'place', ref: place.ref }, 'position', [
        place.title ?? placeInWords(place, strings),
      ]),
      ...(place.title === undefined ? [] : [`, ${placeInWords(place, strings)}`]),
    ]),
  );
  return element('div', { className: ['places'] }, [
    element('p', {}, [lead]),
    element('ul', { role: 'list' }, items),
  ]);
}

/** `after 12.Rc1`; of several positions `from 9.Bg5 to 14.Rc1`. */
export function placeInWords({ move, isMove, last }: PatternPlace, strings: Strings): string {
  if (last !== undefined) return strings.patternRun(move, last);
  return isMove ? strings.after(move) : move;
}

/** The positions as words, a paragraph for each chapter, for media without folds. */
export function toldPlaces({ chapters }: PlacesNode, strings: Strings): Element[] {
  return chapters.map(({ lead, places }) =>
    element('p', { className: ['places'] }, [
      lead,
      ...places.flatMap((place, index) => [
        index === 0 ? ' ' : ', ',
        // Moves say more here than the author's titles.
        linkTo({ to: 'place', ref: place.ref }, 'move', [placeInWords(place, strings)], {
          className: ['position-link'],
        }),
      ]),
      '.',
    ]),
  );
}
