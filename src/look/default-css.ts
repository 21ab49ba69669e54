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

/** What a course without a theme looks like: the first part of the style sheet of every page. */
export function defaultCss(): string {
  return lookBlocks([...colourNames, ...measureNames], defaultIn);
}

function defaultIn(name: PropertyName, mode: Mode): string | undefined {
  if (!(name in colours)) return defaultMeasure(name as MeasureName, mode);
  const light = defaultColour(name as ColourName, 'light');
  const value = defaultColour(name as ColourName, mode);
  // Print is of one colour whatever the screen is: it says each again.
  return mode === 'dark' && value === light ? undefined : value;
}
