import type { RootContent } from 'hast';
import type { Course } from '../../model/index.ts';
import {
  addressInSite,
  assignAddresses,
  chapterDocument,
  contextOf,
  type Medium,
  resolve,
  type Target,
} from '../../render/index.ts';
import type { LetterText } from './choose-text.ts';

/**
 * The text of a letter, with boards as the medium makes them. A letter stands nowhere: an address
 * is whole, as seen from outside the site, or the link becomes text.
 */
export function renderText(
  course: Course,
  { chapters }: Pick<LetterText, 'chapters'>,
  board: Medium['board'],
  site: string | undefined,
): RootContent[] {
  const addresses = assignAddresses(course);
  const context = contextOf(course);
  const addressOf = (target: Target): string | undefined => {
    if (target.to === 'web') return target.address;
    if (target.to === 'course') return target.web;
    if (target.to === 'note' || site === undefined) return undefined;
    const there = addressInSite(target, addresses);
    return there === '' ? undefined : `${site}/${there}`;
  };
  const medium: Medium = { isLive: false, board, addressOf, showsLastBoards: true };
  return chapters.flatMap(
    (chapter) =>
      resolve(chapterDocument({ ...context, chapter }), medium, context.strings).children,
  );
}
