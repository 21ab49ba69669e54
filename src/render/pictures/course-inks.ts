import { type Inks, inksOf, palettes } from '../../draw/index.ts';
import { colourIn } from '../../look/index.ts';
import type { Course } from '../../model/index.ts';

/**
 * The inks of a course's pictures: boards of files, its cards and its cover, its icon; nothing where they are ours, so
 * that a theme of other things changes no picture.
 */
export function courseInks(
  { theme }: Pick<Course, 'theme'>,
  kind: 'two-tone' | 'cloth' | 'light',
): Inks | undefined {
  if (theme === undefined) return undefined;
  const inks = inksOf(kind, (name, mode) => colourIn(theme.look, name, mode));
  return JSON.stringify(inks) === JSON.stringify(palettes[kind]) ? undefined : inks;
}
