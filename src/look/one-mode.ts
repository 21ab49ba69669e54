import { colourNames, defaultColour } from './defaults.ts';
import { setIn } from './effective.ts';
import { placeKey, type ThemeProblem, type ThemeSyntax } from './types.ts';

/**
 * Colours of a hue that a theme changes for light screens alone, and that a dark one then shows as ours: what is blue
 * by day would be red by night.
 */
export function findOneMode({
  look,
  places,
}: Pick<ThemeSyntax, 'look' | 'places'>): ThemeProblem[] {
  return colourNames.flatMap((name): ThemeProblem[] => {
    const place = places[placeKey(name, 'light')];
    if (!hued.has(name) || place === undefined || setIn(look, name, 'dark') !== undefined)
      return [];
    return [
      {
        place,
        message: `\`--${name}\` is yours on light screens alone: on dark ones it stays ${defaultColour(name, 'dark')}.`,
        hint: `Set it for dark screens too: \`@media (prefers-color-scheme: dark) { :root { --${name}: …; } }\`.`,
      },
    ];
  });
}

const hued: ReadonlySet<string> = new Set([
  'accent',
  'board-dark-square',
  'board-plan',
  'board-threat',
  'board-guard',
]);
