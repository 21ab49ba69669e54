import type { Color } from '../../chess/index.ts';
import { drawIcon, frameIcon, type OwnIcon } from '../../draw/icon.ts';
import type { PngJob } from '../../draw/index.ts';
import { colourIn } from '../../look/index.ts';
import type { Course } from '../../model/index.ts';
import { courseInks } from '../../render/index.ts';
import type { SiteFile } from '../site-data.ts';

interface Icon {
  readonly name: string;
  /** Pixels of a side. */
  readonly size: number;
  readonly purpose: 'any' | 'maskable';
}

/** The sizes that browsers ask for before a page can be installed, and those of a maskable icon. */
export const iconSizes: readonly Icon[] = [
  { name: 'icon-192.png', size: 192, purpose: 'any' },
  { name: 'icon-512.png', size: 512, purpose: 'any' },
  { name: 'icon-maskable-192.png', size: 192, purpose: 'maskable' },
  { name: 'icon-maskable-512.png', size: 512, purpose: 'maskable' },
];

/** For a phone's start page; it is cut round by the phone, as a maskable one is. */
export const touchIcon = { name: 'icon-touch-180.png', size: 180, purpose: 'maskable' } as const;

export function iconPath(name: string): string {
  return `images/icons/${name}`;
}

/** The course's icons as jobs for drawing: the author's own, or the king of the side that is taught. */
export function courseIconJobs(course: Course, own: OwnIcon | undefined) {
  return jobsOf((isMaskable) => courseIcon(course, own, isMaskable));
}

export function iconJobs(king: Color) {
  return jobsOf((isMaskable) => drawIcon(king, isMaskable));
}

function jobsOf(
  svgOf: (isMaskable: boolean) => string,
): { readonly path: string; readonly job: PngJob }[] {
  return [...iconSizes, touchIcon].map(({ name, size, purpose }) => ({
    path: iconPath(name),
    job: { svg: svgOf(purpose === 'maskable'), width: size },
  }));
}

/** The icon of a browser's tab. */
export function tabIcon(course: Course, own: OwnIcon | undefined): SiteFile {
  return { path: iconPath('icon.svg'), content: courseIcon(course, own, false) };
}

function courseIcon(course: Course, own: OwnIcon | undefined, isMaskable: boolean): string {
  const inks = courseInks(course, 'light');
  if (own === undefined) return drawIcon(kingOf(course), isMaskable, inks);
  return frameIcon(own, isMaskable, colourIn(course.theme?.look, 'paper', 'light'));
}

function kingOf({ settings: { side } }: Course): Color {
  return side === 'black' ? 'black' : 'white';
}
