import type { Element } from 'hast';
import type { Strings } from '../strings/index.ts';
import type { ChapterPlaces, PlacesNode } from './document.ts';
import { element, linkTo } from './hast.ts';

/** So many positions are told at once; the rest of a longer list is folded. */
const shownAtOnce = 12;

/** The positions of a pattern as lists, long ones folded. */
export function foldedPlaces({ chapters }: PlacesNode, strings: Strings): Element[] {
  const all = chapters.reduce((sum, { places }) => sum + places.length, 0);
  // A fold that would hide a place or two only hides them.
  let room = all <= shownAtOnce + 3 ? all : shownAtOnce;
  const shown: Element[] = [];
  const folded: Element[] = [];
  let hidden = 0;
  for (const { lead, places } of chapters) {
    const now = places.slice(0, room);
    const later = places.slice(room);
    room -= now.length;
    hidden += later.length;
    if (now.length > 0) shown.push(listed({ lead, places: now }));
    if (later.length > 0) folded.push(listed({ lead, places: later }));
  }
  if (hidden === 0) return shown;
  const summary = element('summary', {}, [strings.patternMore(hidden)]);
  return [...shown, element('details', {}, [summary, ...folded])];
}

function listed({ lead, places }: ChapterPlaces): Element {
  const items = places.map(({ ref, move, name }) =>
    element('li', {}, [
      linkTo({ to: 'place', ref }, 'position', [name ?? move]),
      ...(name === undefined ? [] : [` ${move}`]),
    ]),
  );
  return element('div', { className: ['places'] }, [
    element('p', {}, [lead]),
    element('ul', { role: 'list' }, items),
  ]);
}

/** The same as words, a paragraph for each chapter: nobody clicks through them. */
export function toldPlaces({ chapters }: PlacesNode): Element[] {
  return chapters.map(({ lead, places }) =>
    element('p', { className: ['places'] }, [
      lead,
      ...places.flatMap(({ ref, move }, index) => [
        index === 0 ? ' ' : ', ',
        // The author's name for a position says nothing here: its move does, and it needs no more words.
        linkTo({ to: 'place', ref }, 'move', [move], { className: ['position-link'] }),
      ]),
      '.',
    ]),
  );
}
