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
  'ink',
  'rule',
  'coordinate',
  'white-piece',
  'black-piece',
  'last-move',
  'mark',
  'plan',
  'threat',
  'guard',
] as const;
export type Ink = (typeof inks)[number];

export const themes = ['light', 'dark', 'print', 'two-tone'] as const;
/** `cloth` is the ground of covers and cards. */
export type Theme = (typeof themes)[number] | 'cloth';

/** Pieces and squares are the same by day, in the dark and in files; arrows in the dark are darker. */
const ink = '#1d1b18';
const whitePiece = '#fffefb';
const day = { plan: '#1f4e9c', threat: '#c2401c', guard: '#8c4f68' };
const accent = '#98281b';

const light: Readonly<Record<Ink, string>> = {
  sheet: '#fbf8f1',
  paper: '#fffdf8',
  tint: '#d2d0cb',
  ink,
  rule: ink,
  coordinate: '#5d574e',
  'white-piece': whitePiece,
  'black-piece': ink,
  'last-move': accent,
  mark: ink,
  ...day,
};

/** `print` is one colour on white: everything must be told apart without hue. */
export const palettes: Readonly<Record<Theme, Readonly<Record<Ink, string>>>> = {
  light,
  dark: {
    sheet: '#191815',
    paper: '#cbc6bc',
    tint: '#a19d95',
    ink: '#ece6d9',
    rule: '#14120f',
    coordinate: '#b3ab9b',
    'white-piece': '#fbf7ec',
    'black-piece': '#14120f',
    'last-move': '#8a1f10',
    mark: '#14120f',
    plan: '#16408c',
    threat: '#8f2506',
    guard: '#5f2548',
  },
  print: {
    sheet: '#ffffff',
    paper: '#ffffff',
    tint: '#d2d2d2',
    ink: '#000000',
    rule: '#000000',
    coordinate: '#000000',
    'white-piece': '#ffffff',
    'black-piece': '#000000',
    'last-move': '#000000',
    mark: '#000000',
    plan: '#000000',
    threat: '#000000',
    guard: '#000000',
  },
  // The colours of `styles/page.css`: --cover, --on-cover, --on-cover-quiet.
  cloth: { ...light, sheet: '#74211b', ink: '#fff6e8', coordinate: '#f0d3c4' },
  // For picture files: paper, tint and ink, which have few blends, and colour only where an arrow needs it.
  'two-tone': {
    sheet: whitePiece,
    paper: whitePiece,
    tint: '#d2d0cb',
    ink,
    rule: ink,
    coordinate: ink,
    'white-piece': whitePiece,
    'black-piece': ink,
    'last-move': ink,
    mark: ink,
    ...day,
  },
};

/** The ground of `cloth` on a page that is read in the dark. */
export const clothInTheDark = '#4c1713';

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
  'board-rule': { stroke: 'rule', width: 0.6 },
  'board-coordinate': { fill: 'coordinate' },
  'board-turn-white': { fill: 'white-piece', stroke: 'coordinate', width: 0.3 },
  'board-turn-black': { fill: 'black-piece', stroke: 'coordinate', width: 0.3 },
  'last-move': { stroke: 'last-move', width: 0.75 },
  'mark-ground': { stroke: 'paper', width: 1.4 },
  mark: { stroke: 'mark', width: 0.7 },
  // Pieces are drawn in a square of 1000: their widths are in thousandths of a square.
  // The edge of a white one keeps its outline clear of the tint.
  'white-piece-body': { fill: 'white-piece', stroke: 'white-piece', width: 34, round: true },
  'white-piece-lines': { fill: 'black-piece', stroke: 'black-piece', width: 6 },
  'black-piece-body': { fill: 'white-piece' },
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
  return shapes.map(({ part, d }) => `<path ${paintAttributes(part, theme)} d="${d}"/>`).join('');
}

/** Presentation attributes of a part in a theme. */
export function paintAttributes(part: Part, theme: Theme): string {
  const { fill, stroke, width, dash, round }: Paint = paints[part];
  const palette = palettes[theme];
  const attributes = [`fill="${fill ? palette[fill] : 'none'}"`];
  if (!stroke) return attributes.join(' ');
  attributes.push(`stroke="${palette[stroke]}" stroke-width="${width}"`);
  if (dash) attributes.push(`stroke-dasharray="${dash}"`);
  if (round) attributes.push('stroke-linecap="round" stroke-linejoin="round"');
  return attributes.join(' ');
}
