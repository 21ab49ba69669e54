/**
 * What each property of a look is unless a course says otherwise. Runs in the browser too, with the styles of boards:
 * no Node imports, no words.
 */

/** What a page is read on: a light screen, a dark one, a sheet of paper, in the word that CSS has for it. */
export const modes = ['light', 'dark', 'print'] as const;
export type Mode = (typeof modes)[number];

type InModes = readonly [light: string, dark: string, print: string];

const ink = ['#1d1b18', '#ece6d9', '#000000'] as const;
/** Pieces, frame and marks are as dark on a dark screen, since its squares are no darker than a tint. */
const pieceInk = ['#1d1b18', '#14120f', '#000000'] as const;

/** Colours of all modes, as six figures. Paper is one colour: all must be told apart without hue. */
export const colours = {
  paper: ['#fbf8f1', '#191815', '#ffffff'],
  ink,
  quiet: ['#5d574e', '#b3ab9b', '#000000'],
  rule: ['#d8d1c2', '#3f3b34', '#999999'],
  accent: ['#98281b', '#ec947f', '#000000'],
  'on-accent': ['#fffaf2', '#1d1310', '#ffffff'],
  wash: ['#f2ecdf', '#23211d', '#ffffff'],
  edge: ['#7d7567', '#8d8576', '#000000'],
  cover: ['#74211b', '#4c1713', '#ffffff'],
  'on-cover': ['#fff6e8', '#f6e9d8', '#000000'],
  'on-cover-quiet': ['#f0d3c4', '#e3c0b0', '#000000'],
  label: ['#fff6e8', '#f0e2cd', '#ffffff'],
  'on-label': ['#2a0d0a', '#2a0d0a', '#000000'],
  'board-light-square': ['#fffdf8', '#cbc6bc', '#ffffff'],
  'board-dark-square': ['#d2d0cb', '#a19d95', '#d2d2d2'],
  'board-frame': pieceInk,
  'board-coordinate': ['#5d574e', '#b3ab9b', '#000000'],
  'board-white-piece': ['#fffefb', '#fbf7ec', '#ffffff'],
  'board-black-piece': pieceInk,
  'board-last-move': ['#98281b', '#8a1f10', '#000000'],
  'board-mark': pieceInk,
  'board-plan': ['#1f4e9c', '#16408c', '#000000'],
  'board-threat': ['#c2401c', '#8f2506', '#000000'],
  'board-guard': ['#8c4f68', '#5f2548', '#000000'],
} as const satisfies Readonly<Record<string, InModes>>;

export type ColourName = keyof typeof colours;

export function defaultColour(name: ColourName, mode: Mode): string {
  return colours[name][modes.indexOf(mode)] ?? colours[name][0];
}

/** What follows every face that a course names: letters that it may lack. */
export const fallbackFaces = 'Georgia';
/** Those that have the signs of chess. */
export const signFaces = '"STIX Two Math", "Cambria Math", "Noto Sans Math", "Noto Sans Symbols 2"';

/** Sizes and type faces: on screens, and on paper where that differs. */
export const measures = {
  'text-face': [`"Source Serif 4", "Source Serif fallback", ${fallbackFaces}, ${signFaces}, serif`],
  'title-face': ['var(--text-face)'],
  'code-face': ['ui-monospace, Menlo, Consolas, monospace'],
  'text-size': ['1.1875rem', '10pt'],
  'line-height': ['1.5', '1.4'],
  'title-size': ['2.25rem'],
  'title-weight': ['600'],
  measure: ['34rem'],
  corner: ['2px'],
} as const satisfies Readonly<Record<string, readonly [screen: string, print?: string]>>;

export const colourNames = Object.keys(colours) as readonly ColourName[];
export const measureNames = Object.keys(measures) as readonly MeasureName[];

export type MeasureName = keyof typeof measures;
export type PropertyName = ColourName | MeasureName;

/** @returns nothing for what does not differ from one mode to the next, but in the first. */
export function defaultMeasure(name: MeasureName, mode: Mode): string | undefined {
  const [screen, print]: readonly [string, string?] = measures[name];
  if (mode === 'print') return print;
  return mode === 'light' ? screen : undefined;
}
