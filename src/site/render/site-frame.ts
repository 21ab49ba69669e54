import { palettes, pieceSprite, stateSprite } from '../../draw/index.ts';
import type { Course } from '../../model/index.ts';
import { cardPath } from '../../render/index.ts';
import { stringsFor } from '../../strings/index.ts';
import { type CourseContents, coursePages } from '../course-pages.ts';
import type { AssetPaths, Download, SiteFrame } from '../site-data.ts';
import { iconPath, touchIcon } from '../web-app/icons.ts';
import { feedPath } from './feed.ts';

/** Where a site will stand, and what stands in it beside its pages. */
export interface SitePlace {
  readonly assets: AssetPaths;
  readonly offline: boolean;
  readonly site?: string | undefined;
  readonly base?: string | undefined;
  readonly downloads?: readonly Download[];
}

/** What all pages of a site share. */
export function siteFrame({ settings }: Course, place: SitePlace, has: CourseContents): SiteFrame {
  const site = place.site?.replace(/\/+$/, '');
  return {
    language: settings.language,
    title: settings.title,
    side: settings.side,
    notation: settings.notation,
    ...(settings.author !== undefined && { author: settings.author }),
    ...(settings.summary !== undefined && { summary: settings.summary }),
    ...(settings.licence !== undefined && { licence: settings.licence }),
    ...(site !== undefined && { site }),
    ...(place.base !== undefined && { base: place.base }),
    offline: place.offline,
    assets: place.assets,
    card: cardPath(),
    icons: { tab: iconPath('icon.svg'), touch: iconPath(touchIcon.name) },
    sheet: { light: palettes.light.sheet, dark: palettes.dark.sheet },
    sprite: pieceSprite() + stateSprite(),
    pages: coursePages(has, stringsFor(settings.language)),
    ...(site !== undefined && has.news && { feed: feedPath }),
  };
}
