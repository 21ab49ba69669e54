import { readPlainFile } from '../../files/index.ts';
import type { Course } from '../../model/index.ts';
import { refuseUnfit } from '../media-of.ts';

/** Bytes: the check refuses a much smaller one. */
const largest = 20_000_000;

/** The author's icon as a data address, if the course has one. */
export async function readOwnIcon(
  { settings: { icon } }: Course,
  folder: string | undefined,
): Promise<string | undefined> {
  if (icon === undefined || folder === undefined) return undefined;
  await refuseUnfit([icon], folder);
  const { bytes } = await readPlainFile(folder, icon, largest);
  const type = icon.toLowerCase().endsWith('.svg') ? 'image/svg+xml' : 'image/png';
  return `data:${type};base64,${Buffer.from(bytes).toString('base64')}`;
}
