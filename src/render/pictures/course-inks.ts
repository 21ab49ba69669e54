import { type Inks, inksOf, palettes } from '../../draw/index.ts';
import { colourIn } from '../../look/index.ts';
import type { Course } from '../../model/index.ts';

/**
 * The inks of a course's pictures: of boards as files, cards, the cover and the icon. Undefined for the default inks,
 * so that a theme that changes other things changes no picture.
 */
export function courseInks(
  { theme }: Pick<Course, 'theme'>,
  kind: 'two-tone' | 'cloth' | 'light',
): Inks | undefined {
  if (theme === undefined) return undefined;
  const inks = inksOf(kind, (name, mode) => colourIn(theme.look, name, mode));
  return JSON.stringify(inks) === JSON.stringify(palettes[kind]) ? undefined : inks;
}
