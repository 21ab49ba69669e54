import { counted } from '../../contract/index.ts';
import { chapterAt, type PatternBlock } from '../../model/index.ts';
import {
  pageMedium,
  patternPlaces,
  placeInWords,
  renderPattern,
  resolveAll,
  writeHtml,
} from '../../render/index.ts';
import type { PatternEntry, PatternGroup } from '../site-data.ts';
import { makePlates, type PlateMaker } from './plates.ts';
import type { SiteContext } from './site-context.ts';

/** So many places of a pattern are shown at once; the rest of a longer list is folded. */
const shownAtOnce = 8;

/** All patterns of the course, in its order. */
export function patternEntries(context: SiteContext): PatternEntry[] {
  const { course, addresses, strings } = context;
  const page = pageMedium(addresses);
  const drawn = makePlates(context, 300);
  // What is folded is drawn when it is unfolded.
  const late = makePlates(context, 0);
  const blocks = course.chapters.flatMap((chapter) => chapter.blocks);
  return blocks.flatMap((block, index): PatternEntry[] => {
    if (block.kind !== 'pattern') return [];
    const pattern = renderPattern(context, block, {
      id: `pattern-${index + 1}`,
      placesApart: true,
    });
    const html = writeHtml(resolveAll([pattern], page, strings));
    const ref = { chapter: block.chapter, block: block.key, node: 0 };
    const chapter = chapterAt(course, block)?.title ?? '';
    const count = counted(strings.patternCount, block.matches.length, strings.language);
    const groups = groupsOf(context, block, drawn, late);
    return [{ html, chapter, href: addresses.href(ref), count, groups }];
  });
}

/** The places of a pattern; those with the colours exchanged by themselves. */
function groupsOf(
  context: SiteContext,
  { matches }: PatternBlock,
  drawn: PlateMaker,
  late: PlateMaker,
): PatternGroup[] {
  const { strings } = context;
  return [false, true].flatMap((isReversed): PatternGroup[] => {
    const own = matches.filter(({ reversed }) => reversed === isReversed);
    if (own.length === 0) return [];
    const places = patternPlaces(context, own, undefined).flatMap((chapter) => chapter.places);
    // A fold that would hide a place or two only hides them.
    const room = places.length <= shownAtOnce + 2 ? places.length : shownAtOnce;
    const { course } = context;
    const plates = places.map((place, index) => {
      const maker = index < room ? drawn : late;
      const chapter = chapterAt(course, place.ref)?.title ?? '';
      const plate = maker.plate(place.ref, {
        title: place.title,
        words: placeInWords(place, strings),
      });
      return plate && { ...plate, chapter: strings.finding.wayIn(chapter) };
    });
    const made = (from: number, to?: number) =>
      plates.slice(from, to).flatMap((plate) => plate ?? []);
    const folded = places.slice(room).reduce((sum, { count }) => sum + count, 0);
    return [
      {
        ...(isReversed && { lead: strings.patternReversed }),
        shown: made(0, room),
        folded: made(room),
        ...(folded > 0 && { more: strings.patternMore(folded) }),
      },
    ];
  });
}
