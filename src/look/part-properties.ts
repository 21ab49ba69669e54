/**
 * What a theme may say of a part: what changes how it looks, within bounds, and nothing that moves, hides, covers or
 * fetches. Everything else is refused by name.
 */

/** Bounds of the lengths in a value, in root sizes of 16 pixels; a percentage or `em` counts as of one. */
interface Bounds {
  readonly least: number;
  readonly most: number;
}

const room: Bounds = { least: 0, most: 12 };
const edge: Bounds = { least: 0, most: 2 };
const ornament: Bounds = { least: 0, most: 40 };
const shadow: Bounds = { least: -3, most: 3 };
const none: Bounds = { least: 0, most: 0 };

const sides = [
  'top',
  'right',
  'bottom',
  'left',
  'block',
  'block-start',
  'block-end',
  'inline',
  'inline-start',
  'inline-end',
];
const ofSides = (name: string) => [name, ...sides.map((side) => `${name}-${side}`)];
const ofBorders = ['border', ...sides.map((side) => `border-${side}`)];
const within = (names: readonly string[], bounds: Bounds) =>
  names.map((name) => [name, bounds] as const);

/** By the property's name. */
export const partProperties: ReadonlyMap<string, Bounds> = new Map([
  ...within(
    ['color', 'background-color', 'text-decoration-color', 'accent-color', 'caret-color'],
    none,
  ),
  ...within(
    [
      'background',
      'background-image',
      'background-size',
      'background-position',
      'background-repeat',
    ],
    ornament,
  ),
  ...within(ofBorders, edge),
  ...within(
    ofBorders.flatMap((name) => [`${name}-width`, `${name}-style`, `${name}-color`]),
    edge,
  ),
  ...within(
    [
      'border-radius',
      'border-top-left-radius',
      'border-top-right-radius',
      'border-bottom-left-radius',
      'border-bottom-right-radius',
    ],
    { least: 0, most: 6 },
  ),
  ...within(['box-shadow', 'text-shadow'], shadow),
  ...within(ofSides('padding'), room),
  ...within(ofSides('margin'), room),
  ...within(['gap', 'row-gap', 'column-gap'], room),
  ...within(['font-size'], { least: 0.7, most: 8 }),
  ...within(['letter-spacing', 'word-spacing'], { least: -0.06, most: 0.5 }),
  ...within(['text-indent'], { least: 0, most: 6 }),
  ...within(['text-underline-offset', 'text-decoration', 'text-decoration-thickness'], edge),
  ...within(['line-height'], { least: 1, most: 3 }),
  ...within(
    [
      'font-family',
      'font-style',
      'font-weight',
      'font-stretch',
      'font-variant',
      'font-variant-caps',
      'font-variant-numeric',
      'font-variant-ligatures',
      'font-feature-settings',
      'font-kerning',
      'text-align',
      'text-transform',
      'text-decoration-line',
      'text-decoration-style',
      'text-wrap',
      'hyphens',
      'list-style-type',
      'quotes',
      'border-collapse',
    ],
    { least: 0, most: 1000 },
  ),
]);

/** What only an ornament before or behind a part may have besides. */
export const ornamentProperties: ReadonlyMap<string, Bounds> = new Map([
  ...within(['content', 'display'], none),
  ...within(['width', 'height', 'max-width'], ornament),
]);

/** Functions that a value may call: none of them fetches. */
export const harmlessFunctions: ReadonlySet<string> = new Set([
  'var',
  'rgb',
  'rgba',
  'hsl',
  'hsla',
  'hwb',
  'lab',
  'lch',
  'oklab',
  'oklch',
  'color-mix',
  'linear-gradient',
  'radial-gradient',
  'repeating-linear-gradient',
  'repeating-radial-gradient',
  'conic-gradient',
]);

/** What `display` of an ornament may be. */
export const ornamentDisplays: ReadonlySet<string> = new Set(['block', 'inline-block', 'inline']);

/** What may follow a part. */
export const pseudos: ReadonlySet<string> = new Set([
  '',
  ':hover',
  ':first-child',
  ':last-child',
  '::before',
  '::after',
  '::first-letter',
  '::first-line',
  '::marker',
]);
