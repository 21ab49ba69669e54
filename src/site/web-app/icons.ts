import type { Color } from '../../chess/index.ts';
import { drawIcon } from '../../draw/icon.ts';
import type { PngJob } from '../../draw/pngs.ts';
import type { Course } from '../../model/index.ts';
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

/** The course's icons as jobs for drawing: the king of the side that is taught. */
export function courseIconJobs(course: Course) {
  return iconJobs(kingOf(course));
}

export function iconJobs(king: Color): { readonly path: string; readonly job: PngJob }[] {
  return [...iconSizes, touchIcon].map(({ name, size, purpose }) => ({
    path: iconPath(name),
    job: { svg: drawIcon(king, purpose === 'maskable'), width: size },
  }));
}

/** The icon of a browser's tab. */
export function tabIcon(course: Course): SiteFile {
  return { path: iconPath('icon.svg'), content: drawIcon(kingOf(course), false) };
}

function kingOf({ settings: { side } }: Course): Color {
  return side === 'black' ? 'black' : 'white';
}
