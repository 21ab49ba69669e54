import {
  type ColourName,
  colourNames,
  colours,
  defaultColour,
  defaultMeasure,
  type MeasureName,
  type Mode,
  measureNames,
  type PropertyName,
} from './defaults.ts';
import { lookBlocks } from './look-blocks.ts';

/** The style sheet `site/styles/look.css`, which a test keeps equal: what a course without a theme looks like. */
export function defaultCss(): string {
  return [
    '/* Made from src/look/defaults.ts by `npx vitest run src/look -u`; do not edit. */',
    lookBlocks([...colourNames, ...measureNames], defaultIn),
    '',
  ].join('\n');
}

function defaultIn(name: PropertyName, mode: Mode): string | undefined {
  if (!(name in colours)) return defaultMeasure(name as MeasureName, mode);
  const light = defaultColour(name as ColourName, 'light');
  const value = defaultColour(name as ColourName, mode);
  // Print is of one colour whatever the screen is: it says each again.
  return mode === 'dark' && value === light ? undefined : value;
}
