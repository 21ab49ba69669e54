import { pieceSprite, stateSprite } from '../../draw/index.ts';
import { type Course, courseId } from '../../model/index.ts';
import { cardPath } from '../../render/index.ts';
import { stringsFor } from '../../strings/index.ts';
import { type CourseContents, coursePages } from '../course-pages.ts';
import type { SiteFrame, SitePlace } from '../site-data.ts';
import { splitTitle } from '../split-title.ts';
import { iconPath, touchIcon } from '../web-app/icons.ts';
import { readerWordsScript } from './data-scripts.ts';
import { feedPath } from './feed.ts';
import { lookOfPages } from './look-files.ts';
import { linksToPages } from './own-pages.ts';

/** Chapters listed on every page; with more, pages would be mostly lists. */
const mostListed = 40;

export function siteFrame(course: Course, place: SitePlace, has: CourseContents): SiteFrame {
  const { settings, chapters } = course;
  const strings = stringsFor(settings.language);
  const site = place.site?.replace(/\/+$/, '');
  return {
    course: courseId(course),
    language: settings.language,
    title: settings.title,
    ...splitTitle(settings.title),
    side: settings.side,
    notation: settings.notation,
    ...(settings.author !== undefined && { author: settings.author }),
    ...(settings.summary !== undefined && { summary: settings.summary }),
    ...(settings.for !== undefined && { audience: settings.for }),
    ...(settings.teaches !== undefined && { teaches: settings.teaches }),
    ...(settings.licence !== undefined && { licence: settings.licence }),
    ...(site !== undefined && { site }),
    ...(place.base !== undefined && { base: place.base }),
    offline: place.offline,
    assets: place.assets,
    card: settings.card ?? cardPath(),
    ...(settings.card !== undefined && { hasOwnCard: true as const }),
    icons: { tab: iconPath('icon.svg'), touch: iconPath(touchIcon.name) },
    ...lookOfPages(course, place.assets),
    sprite: pieceSprite() + stateSprite(),
    readerWords: readerWordsScript(strings).path,
    pages: coursePages(has, strings),
    chapters:
      chapters.length > mostListed
        ? []
        : chapters.map(({ id, title }) => ({ file: `${id}.html`, title })),
    ...linksToPages(course.pages),
    ...(site !== undefined && has.news && { feed: feedPath }),
    ...(place.shelf !== undefined && { shelf: place.shelf }),
    ...(place.languages && { languages: place.languages }),
  };
}
