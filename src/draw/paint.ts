/**
 * How each part of a board is painted, in one table: files are painted by attributes
 * (`paintAttributes`), pages by classes (`boardCss`). Widths and dashes are in board units.
 */
import { type ColourName, defaultColour, type Mode } from '../look/defaults.ts';

/** The inks of a board: the ground and the words around it, and what is on it. */
export const inks = [
  'paper',
  'ink',
  'board-light-square',
  'board-dark-square',
  'board-frame',
  'board-coordinate',
  'board-white-piece',
  'board-black-piece',
  'board-last-move',
  'board-mark',
  'board-plan',
  'board-threat',
  'board-guard',
] as const satisfies readonly ColourName[];
export type Ink = (typeof inks)[number];

/** A colour for each ink, as six figures. */
export type Inks = Readonly<Record<Ink, string>>;

export const themes = ['light', 'dark', 'print', 'two-tone'] as const;
/** `cloth` is the ground of covers and cards. */
export type Theme = (typeof themes)[number] | 'cloth';

/** What colour something has in a mode: that of a course's look, or the default. */
export type ColourIn = (name: ColourName, mode: Mode) => string;

/** The inks of a theme. `print` is one colour on white: everything must be told apart without hue. */
export function inksOf(theme: Theme, colourIn: ColourIn = defaultColour): Inks {
  switch (theme) {
    case 'cloth':
      // The colours of covers and cards: a board of light pages on the cover's ground.
      return {
        ...inksIn('light', colourIn),
        paper: colourIn('cover', 'light'),
        ink: colourIn('on-cover', 'light'),
        'board-coordinate': colourIn('on-cover-quiet', 'light'),
      };
    case 'two-tone':
      return twoTone(colourIn);
    default:
      return inksIn(theme, colourIn);
  }
}

function inksIn(mode: Mode, colourIn: ColourIn): Inks {
  return fromInks((ink) => colourIn(ink, mode));
}

function fromInks(of: (ink: Ink) => string): Inks {
  return Object.fromEntries(inks.map((ink) => [ink, of(ink)])) as Record<Ink, string>;
}

const coloured: ReadonlySet<Ink> = new Set(['board-plan', 'board-threat', 'board-guard']);
const whites: ReadonlySet<Ink> = new Set(['paper', 'board-light-square', 'board-white-piece']);

/**
 * For picture files: white, tint and ink, which have few blends, and colour only where an arrow needs it. What a look
 * changes is as on light pages.
 */
function twoTone(colourIn: ColourIn): Inks {
  return fromInks((ink) => {
    const colour = colourIn(ink, 'light');
    if (colour !== defaultColour(ink, 'light')) return colour;
    if (whites.has(ink)) return defaultColour('board-white-piece', 'light');
    if (ink === 'board-dark-square' || coloured.has(ink)) return colour;
    return defaultColour('ink', 'light');
  });
}

export const palettes: Readonly<Record<Theme, Inks>> = {
  light: inksOf('light'),
  dark: inksOf('dark'),
  print: inksOf('print'),
  cloth: inksOf('cloth'),
  'two-tone': inksOf('two-tone'),
};

export function asInks(theme: Theme | Inks): Inks {
  return typeof theme === 'string' ? palettes[theme] : theme;
}

export interface Paint {
  readonly fill?: Ink;
  readonly stroke?: Ink;
  readonly width?: number;
  readonly dash?: string;
  readonly round?: true;
}

/** Every part of a board, in the order of the layers. A part is also the class of its paths. */
export const paints = {
  'board-sheet': { fill: 'paper' },
  'board-paper': { fill: 'board-light-square' },
  'board-tint': { fill: 'board-dark-square' },
  'board-rule': { stroke: 'board-frame', width: 0.6 },
  'board-coordinate': { fill: 'board-coordinate' },
  'board-turn-white': { fill: 'board-white-piece', stroke: 'board-coordinate', width: 0.3 },
  'board-turn-black': { fill: 'board-black-piece', stroke: 'board-coordinate', width: 0.3 },
  'last-move': { stroke: 'board-last-move', width: 0.75 },
  'mark-ground': { stroke: 'board-light-square', width: 1.4 },
  mark: { stroke: 'board-mark', width: 0.7 },
  // Pieces are drawn in a square of 1000: their widths are in thousandths of a square.
  // The edge of a white one keeps its outline clear of the tint.
  'white-piece-body': {
    fill: 'board-white-piece',
    stroke: 'board-white-piece',
    width: 34,
    round: true,
  },
  'white-piece-lines': { fill: 'board-black-piece', stroke: 'board-black-piece', width: 6 },
  'black-piece-body': { fill: 'board-white-piece' },
  'black-piece-lines': { fill: 'board-black-piece' },
  'arrow-ground': { stroke: 'board-light-square', width: 2, round: true },
  'plan-shaft': { stroke: 'board-plan', width: 0.9 },
  'plan-head': { fill: 'board-plan' },
  'threat-shaft': { stroke: 'board-threat', width: 0.8, dash: '2 1.1' },
  'threat-head': { stroke: 'board-threat', width: 0.8 },
  'guard-shaft': { stroke: 'board-guard', width: 1, dash: '0 1.8', round: true },
  'guard-head': { stroke: 'board-guard', width: 0.9, round: true },
} as const satisfies Readonly<Record<string, Paint>>;

type PaintName = keyof typeof paints;

/** A path of a board: the part it is, which says how it is painted, and its data in board units. */
export interface Shape {
  readonly part: PaintName;
  readonly d: string;
}

/** The shapes as SVG paths with classes, for pages: the style sheet paints them. */
export function classMarkup(shapes: readonly Shape[]): string {
  return shapes.map(({ part, d }) => `<path class="${part}" d="${d}"/>`).join('');
}

/** The shapes as SVG paths with presentation attributes, for files that stand alone. */
export function inkedMarkup(shapes: readonly Shape[], palette: Inks): string {
  return shapes.map(({ part, d }) => `<path ${paintAttributes(part, palette)} d="${d}"/>`).join('');
}

export function paintAttributes(part: PaintName, palette: Inks): string {
  const { fill, stroke, width, dash, round }: Paint = paints[part];
  const attributes = [`fill="${fill ? palette[fill] : 'none'}"`];
  if (!stroke) return attributes.join(' ');
  attributes.push(`stroke="${palette[stroke]}" stroke-width="${width}"`);
  if (dash) attributes.push(`stroke-dasharray="${dash}"`);
  if (round) attributes.push('stroke-linecap="round" stroke-linejoin="round"');
  return attributes.join(' ');
}
