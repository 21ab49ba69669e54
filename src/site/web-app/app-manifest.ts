import { colourIn, defaultColour } from '../../look/index.ts';
import type { Course } from '../../model/index.ts';
import { directionOf } from '../../strings/index.ts';
import type { SiteFile } from '../site-data.ts';
import { iconPath, iconSizes } from './icons.ts';

/** So much of a name fits below an icon (common practice, no source). */
const shortName = 14;

/** What makes the course a thing that can be installed (W3C Web Application Manifest). */
export function appManifest({ settings, theme }: Course): SiteFile {
  return manifestOf(settings, colourIn(theme?.look, 'paper', 'light'));
}

/** The same for whatever has a title; its first page and its icons stand where those of a course do. */
export function manifestOf(
  {
    title,
    summary,
    language,
  }: {
    readonly title: string;
    readonly summary?: string | undefined;
    readonly language: string;
  },
  paper = defaultColour('paper', 'light'),
): SiteFile {
  const manifest = {
    name: title,
    short_name: shorten(title),
    ...(summary !== undefined && { description: summary }),
    lang: language,
    dir: directionOf(language),
    id: './',
    start_url: './index.html',
    scope: './',
    display: 'minimal-ui',
    background_color: paper,
    theme_color: paper,
    icons: [
      { src: iconPath('icon.svg'), type: 'image/svg+xml', sizes: 'any' },
      ...iconSizes.map(({ name, size, purpose }) => ({
        src: iconPath(name),
        type: 'image/png',
        sizes: `${size}x${size}`,
        purpose,
      })),
    ],
  };
  return { path: 'course.webmanifest', content: `${JSON.stringify(manifest, null, 2)}\n` };
}

/** The first words of a title, as many as there is room for. */
function shorten(title: string): string {
  if (title.length <= shortName) return title;
  const words = title.split(/[\s:–—]+/);
  let short = '';
  for (const word of words) {
    const longer = short === '' ? word : `${short} ${word}`;
    if (longer.length > shortName) break;
    short = longer;
  }
  return short === '' ? title.slice(0, shortName) : short;
}
