/**
 * How each part of a board is painted, in one table: files are painted by attributes
 * (`paintAttributes`), pages by classes (`boardCss`). Widths and dashes are in board units.
 */
import type { Shape } from './shape.ts';

/** The inks of a board. A theme gives each a colour. */
export const inks = [
  'sheet',
  'paper',
  'tint',
  'hatch',
  'ink',
  'white-piece',
  'black-piece',
  'white-edge',
  'black-edge',
  'last-move',
  'mark',
  'plan',
  'threat',
  'guard',
] as const;
export type Ink = (typeof inks)[number];

export const themes = ['light', 'dark', 'print', 'two-tone'] as const;
export type Theme = (typeof themes)[number];

/**
 * What a theme does without. Flat squares and pieces with no light edge around them have few
 * blends, which makes small files.
 */
const leftOut: Readonly<Record<Theme, readonly Ink[]>> = {
  light: [],
  dark: [],
  print: [],
  'two-tone': ['hatch', 'white-edge', 'black-edge'],
};

const twoTone = { paper: '#fdfbf6', tint: '#d9d4c9', ink: '#211d18' };

/** `print` is one colour on white: everything must be told apart without hue. */
export const palettes: Readonly<Record<Theme, Readonly<Record<Ink, string>>>> = {
  light: {
    sheet: '#fdfbf6',
    paper: '#fdfbf6',
    tint: '#f1ebdf',
    hatch: '#8b8171',
    ink: '#211d18',
    'white-piece': '#fffefb',
    'black-piece': '#211d18',
    'white-edge': '#fdfbf6',
    'black-edge': '#fdfbf6',
    'last-move': '#211d18',
    mark: '#211d18',
    plan: '#1f4e9c',
    threat: '#c2401c',
    guard: '#8c4f68',
  },
  dark: {
    sheet: '#1e2023',
    paper: '#565a61',
    tint: '#42464c',
    hatch: '#24272b',
    ink: '#b9b4a9',
    'white-piece': '#f3eee3',
    'black-piece': '#121315',
    'white-edge': '#33363b',
    'black-edge': '#b9b4a9',
    'last-move': '#f3eee3',
    mark: '#f3eee3',
    plan: '#86b4ff',
    threat: '#ff9a66',
    guard: '#f0c8d8',
  },
  print: {
    sheet: '#ffffff',
    paper: '#ffffff',
    tint: '#ffffff',
    hatch: '#000000',
    ink: '#000000',
    'white-piece': '#ffffff',
    'black-piece': '#000000',
    'white-edge': '#ffffff',
    'black-edge': '#ffffff',
    'last-move': '#000000',
    mark: '#000000',
    plan: '#000000',
    threat: '#000000',
    guard: '#000000',
  },
  // For picture files: paper, tint and ink, and colour only where an arrow needs it.
  'two-tone': {
    sheet: twoTone.paper,
    paper: twoTone.paper,
    tint: twoTone.tint,
    hatch: twoTone.tint,
    ink: twoTone.ink,
    'white-piece': twoTone.paper,
    'black-piece': twoTone.ink,
    'white-edge': twoTone.paper,
    'black-edge': twoTone.paper,
    'last-move': twoTone.ink,
    mark: twoTone.ink,
    plan: '#1f4e9c',
    threat: '#c2401c',
    guard: '#8c4f68',
  },
};

export interface Paint {
  readonly fill?: Ink;
  readonly stroke?: Ink;
  readonly width?: number;
  readonly dash?: string;
  readonly round?: true;
}

/** Every part of a board, in the order of the layers. A part is also the class of its paths. */
export const paints = {
  'board-sheet': { fill: 'sheet' },
  'board-paper': { fill: 'paper' },
  'board-tint': { fill: 'tint' },
  'board-hatch': { stroke: 'hatch', width: 0.2 },
  'board-rule': { stroke: 'ink', width: 0.5 },
  'board-hairline': { stroke: 'ink', width: 0.2 },
  'board-coordinate': { fill: 'ink' },
  'board-turn-white': { fill: 'white-piece', stroke: 'ink', width: 0.3 },
  'board-turn-black': { fill: 'black-piece', stroke: 'ink', width: 0.3 },
  'last-move-ground': { stroke: 'paper', width: 0.9 },
  'last-move-to': { stroke: 'last-move', width: 0.3 },
  'last-move-from': { stroke: 'last-move', width: 0.35, dash: '0.55 0.59' },
  'mark-ground': { stroke: 'paper', width: 1.4 },
  mark: { stroke: 'mark', width: 0.7 },
  // Pieces are drawn in a square of 1000: their widths are in thousandths of a square.
  'white-piece-body': { fill: 'white-piece', stroke: 'white-edge', width: 60, round: true },
  'white-piece-lines': { fill: 'black-piece', stroke: 'black-piece', width: 6 },
  'black-piece-body': { fill: 'black-edge', stroke: 'black-edge', width: 60, round: true },
  'black-piece-lines': { fill: 'black-piece' },
  'arrow-ground': { stroke: 'paper', width: 2, round: true },
  'plan-shaft': { stroke: 'plan', width: 0.9 },
  'plan-head': { fill: 'plan' },
  'threat-shaft': { stroke: 'threat', width: 0.8, dash: '2 1.1' },
  'threat-head': { stroke: 'threat', width: 0.8 },
  'guard-shaft': { stroke: 'guard', width: 1, dash: '0 1.8', round: true },
  'guard-head': { stroke: 'guard', width: 0.9, round: true },
} as const satisfies Readonly<Record<string, Paint>>;

export type Part = keyof typeof paints;

/** The shapes as SVG paths with classes, for pages: the style sheet paints them. */
export function classMarkup(shapes: readonly Shape[]): string {
  return shapes.map(({ part, d }) => `<path class="${part}" d="${d}"/>`).join('');
}

/** The shapes as SVG paths with presentation attributes, for files that stand alone. */
export function themeMarkup(shapes: readonly Shape[], theme: Theme): string {
  return shapes
    .filter(({ part }) => isPainted(paints[part], theme))
    .map(({ part, d }) => `<path ${paintAttributes(part, theme)} d="${d}"/>`)
    .join('');
}

function isPainted({ fill, stroke }: Paint, theme: Theme): boolean {
  return fill !== undefined || (stroke !== undefined && !leftOut[theme].includes(stroke));
}

/** Presentation attributes of a part in a theme. */
export function paintAttributes(part: Part, theme: Theme): string {
  const { fill, stroke, width, dash, round }: Paint = paints[part];
  const palette = palettes[theme];
  const attributes = [`fill="${fill ? palette[fill] : 'none'}"`];
  if (!stroke || leftOut[theme].includes(stroke)) return attributes.join(' ');
  attributes.push(`stroke="${palette[stroke]}" stroke-width="${width}"`);
  if (dash) attributes.push(`stroke-dasharray="${dash}"`);
  if (round) attributes.push('stroke-linecap="round" stroke-linejoin="round"');
  return attributes.join(' ');
}
