import { createHash } from 'node:crypto';
import { hostedThemeSheet, themeSheet } from '../../contract/index.ts';
import {
  colourIn,
  firstFamily,
  firstFontFiles,
  hostedThemeCss,
  type Look,
  themeCss,
} from '../../look/index.ts';
import type { Course } from '../../model/index.ts';
import type { AssetPaths, SiteFile, SiteFrame } from '../site-data.ts';

/** The style sheet of a course's own look; it stands at the root, beside `media/`. */
export function lookSheet({ theme }: Course): SiteFile | undefined {
  if (theme === undefined) return undefined;
  const content = themeCss(theme.look, addressOf);
  const edition = createHash('sha256').update(content).digest('hex').slice(0, 12);
  return { path: themeSheet(edition), content };
}

/** The same for pages of the course in the layout of another site. */
export function hostedLookSheet(course: Course): SiteFile | undefined {
  const sheet = lookSheet(course);
  if (sheet === undefined || course.theme === undefined) return undefined;
  const content = hostedThemeCss(course.theme.look, addressOf);
  return { path: hostedThemeSheet(sheet.path), content };
}

/** What every page must know of the look. */
export function lookOfPages(
  course: Course,
  { fonts }: AssetPaths,
): Pick<SiteFrame, 'sheet' | 'cloth' | 'themeSheet' | 'firstFonts' | 'logo'> {
  const look = course.theme?.look;
  const sheet = lookSheet(course);
  const { logo } = course.settings;
  const inModes = (name: 'paper' | 'cover') => ({
    light: colourIn(look, name, 'light'),
    dark: colourIn(look, name, 'dark'),
  });
  return {
    sheet: inModes('paper'),
    cloth: inModes('cover'),
    ...(sheet && { themeSheet: sheet.path }),
    ...(look && { firstFonts: firstFontsOf(look, fonts) }),
    ...(logo && {
      logo: {
        light: addressOf(logo.light),
        dark: addressOf(logo.dark ?? logo.light),
        cover: addressOf(logo.cover ?? logo.light),
      },
    }),
  };
}

/** Of ours none is needed for the first lines where the course has a text face of its own. */
function firstFontsOf(look: Look, ours: readonly string[]): readonly string[] {
  const own = firstFontFiles(look).map(addressOf);
  const isReplaced = look.faces.some(({ family }) => family === firstFamily(look, 'text-face'));
  return isReplaced ? own : [...ours, ...own];
}

function addressOf(file: string): string {
  return file.split('/').map(encodeURIComponent).join('/');
}
