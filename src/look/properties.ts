/**
 * The one table of what `theme.css` may set. The handbook's table is made of it, the reader of themes holds values
 * against it, and the style sheet of pages has its defaults.
 */
import {
  type ColourName,
  colours,
  type MeasureName,
  type Mode,
  measures,
  modes,
  type PropertyName,
} from './defaults.ts';

/** What a value may be: `colour`, a list of type faces, or a number or length within bounds. */
export type ValueType =
  | { readonly is: 'colour' }
  | { readonly is: 'faces' }
  | { readonly is: 'number'; readonly least: number; readonly most: number }
  | {
      readonly is: 'length';
      readonly units: readonly string[];
      /** In root sizes of browsers (16 pixels), whatever the unit. */
      readonly least: number;
      readonly most: number;
    };

export const groups = ['pages', 'cover', 'boards', 'type', 'shape'] as const;
export type Group = (typeof groups)[number];

export interface Property {
  readonly name: PropertyName;
  readonly group: Group;
  /** What it is, in half a sentence. */
  readonly about: string;
  /** What shows it. */
  readonly where: string;
  readonly type: ValueType;
  /** In which modes it may be set; nothing else has a use for it. */
  readonly modes: readonly Mode[];
  /** By mode; where a mode has none of its own, what it shows there. */
  readonly defaults: Readonly<Partial<Record<Mode, string>>>;
}

type About = Pick<Property, 'about' | 'where'> & { readonly modes?: readonly Mode[] };

const screens = ['light', 'dark'] as const;
const pictures = 'pages, pictures, letters, books, cards';

const aboutColours: Readonly<Record<ColourName, About & { readonly group: Group }>> = {
  // On paper the sheet is what it is: browsers print no grounds unless told to.
  paper: {
    group: 'pages',
    about: 'ground of pages',
    where: 'pages, letters, icon',
    modes: screens,
  },
  ink: { group: 'pages', about: 'text', where: pictures },
  quiet: { group: 'pages', about: 'text that stands back', where: 'pages, letters' },
  rule: { group: 'pages', about: 'thin rules between parts', where: 'pages, letters' },
  accent: {
    group: 'pages',
    about: 'what to do, where one is: the main button, links’ lines, focus',
    where: 'pages, letters',
  },
  'on-accent': { group: 'pages', about: 'text on the accent', where: 'pages', modes: screens },
  wash: {
    group: 'pages',
    about: 'ground beside the text: under the board, under code',
    where: 'pages',
    modes: screens,
  },
  edge: { group: 'pages', about: 'edges of buttons and fields', where: 'pages' },
  cover: {
    group: 'cover',
    about: 'ground of the cover',
    where: 'first page, cards, cover of the book',
    modes: screens,
  },
  'on-cover': {
    group: 'cover',
    about: 'title and text on the cover',
    where: 'first page, cards, cover of the book',
    modes: screens,
  },
  'on-cover-quiet': {
    group: 'cover',
    about: 'text on the cover that stands back; coordinates of its board',
    where: 'first page, cards, cover of the book',
    modes: screens,
  },
  label: { group: 'cover', about: 'the button on the cover', where: 'first page', modes: screens },
  'on-label': {
    group: 'cover',
    about: 'text on that button',
    where: 'first page',
    modes: screens,
  },
  'board-light-square': { group: 'boards', about: 'light squares', where: pictures },
  'board-dark-square': { group: 'boards', about: 'dark squares', where: pictures },
  'board-frame': { group: 'boards', about: 'frame around the squares', where: pictures },
  'board-coordinate': {
    group: 'boards',
    about: 'letters and numbers beside the board',
    where: pictures,
  },
  'board-white-piece': { group: 'boards', about: 'body of white pieces', where: pictures },
  'board-black-piece': {
    group: 'boards',
    about: 'body of black pieces, outline of white ones',
    where: pictures,
  },
  'board-last-move': { group: 'boards', about: 'frame of the last move', where: pictures },
  'board-mark': { group: 'boards', about: 'marked squares', where: pictures },
  'board-plan': { group: 'boards', about: 'arrow of a plan', where: pictures },
  'board-threat': { group: 'boards', about: 'arrow of a threat', where: pictures },
  'board-guard': { group: 'boards', about: 'arrow of a piece that guards', where: pictures },
};

const length = (units: string, least: number, most: number): ValueType => ({
  is: 'length',
  units: units.split(' '),
  least,
  most,
});

const aboutMeasures: Readonly<
  Record<MeasureName, About & { readonly group: Group; readonly type: ValueType }>
> = {
  'text-face': {
    group: 'type',
    type: { is: 'faces' },
    about: 'type faces of text, the first that there is',
    where: 'pages, books, cards',
  },
  'title-face': {
    group: 'type',
    type: { is: 'faces' },
    about: 'type faces of titles and headings',
    where: 'pages, books, cards',
  },
  'code-face': {
    group: 'type',
    type: { is: 'faces' },
    about: 'type faces of code',
    where: 'pages',
  },
  'text-size': {
    group: 'type',
    type: length('rem px pt', 0.8, 1.75),
    about: 'size of text; narrow windows have nine tenths of it',
    where: 'pages, handout',
  },
  'line-height': {
    group: 'type',
    type: { is: 'number', least: 1.2, most: 2 },
    about: 'height of a line of text, in its size',
    where: 'pages, handout',
  },
  'title-size': {
    group: 'type',
    type: length('rem px', 1.25, 4.5),
    about: 'size of a page’s title',
    where: 'pages',
    modes: screens,
  },
  'title-weight': {
    group: 'type',
    type: { is: 'number', least: 100, most: 900 },
    about: 'weight of titles and headings',
    where: 'pages',
  },
  measure: {
    group: 'shape',
    type: length('rem px', 20, 60),
    about: 'width of the column of text',
    where: 'pages',
    modes: screens,
  },
  corner: {
    group: 'shape',
    type: length('rem px', 0, 1.5),
    about: 'how round the corners of buttons and fields are',
    where: 'pages',
    modes: screens,
  },
};

export const properties: readonly Property[] = [
  ...(Object.keys(colours) as ColourName[]).map((name): Property => {
    const { group, about, where, modes: set = modes } = aboutColours[name];
    const defaults = Object.fromEntries(
      set.map((mode) => [mode, colours[name][modes.indexOf(mode)]]),
    );
    return { name, group, about, where, type: { is: 'colour' }, modes: set, defaults };
  }),
  ...(Object.keys(measures) as MeasureName[]).map((name): Property => {
    const { group, about, where, type, modes: set = modes } = aboutMeasures[name];
    const [screen, print = screen]: readonly [string, string?] = measures[name];
    const defaults = Object.fromEntries(
      set.map((mode) => [mode, mode === 'print' ? print : screen]),
    );
    return { name, group, about, where, type, modes: set, defaults };
  }),
];

const byName: ReadonlyMap<string, Property> = new Map(properties.map((each) => [each.name, each]));

/** @param name without the hyphens before it. */
export function findProperty(name: string): Property | undefined {
  return byName.get(name);
}
