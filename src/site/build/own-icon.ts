import { readPlainFile } from '../../files/index.ts';
import type { Course } from '../../model/index.ts';
import { refuseUnfit } from '../media-of.ts';
import { SiteError } from '../site-error.ts';

/** Bytes: every page loads it (our judgement, no source). */
const largest = 300_000;

/**
 * The author's icon as a data address, if the course has one.
 * @throws SiteError if it cannot be an icon.
 */
export async function readOwnIcon(
  { settings: { icon } }: Course,
  folder: string | undefined,
): Promise<string | undefined> {
  if (icon === undefined || folder === undefined) return undefined;
  await refuseUnfit([icon], folder);
  const { bytes, size } = await readPlainFile(folder, icon, largest);
  if (size > largest) {
    throw new SiteError(
      `the icon ${icon} has ${Math.ceil(size / 1000)} KB, and ${largest / 1000} KB are the most`,
      'save it smaller: 512 pixels are enough',
    );
  }
  const isSvg = icon.toLowerCase().endsWith('.svg');
  if (isSvg && /<text[\s>]/.test(Buffer.from(bytes).toString('utf8'))) {
    throw new SiteError(
      `the icon ${icon} holds text, which would be lost where its type face is not`,
      'turn the text into outlines, or save it as a PNG',
    );
  }
  const type = isSvg ? 'image/svg+xml' : 'image/png';
  return `data:${type};base64,${Buffer.from(bytes).toString('base64')}`;
}
