/**
 * The style sheet of a theme, for pages: it comes behind all others. Of a theme's text nothing is copied; each thing is
 * written anew from what was read and held to be harmless.
 */
import {
  type ColourName,
  colourNames,
  type Mode,
  measureNames,
  type PropertyName,
} from './defaults.ts';
import { colourIn, isColour, measureIn } from './effective.ts';
import { hostedScope, lookBlocks } from './look-blocks.ts';
import { findPart } from './parts.ts';
import type { Declaration, FontFace, Look, PartRule } from './types.ts';

/** @param addressOf where a file of `media/` stands, as the sheet has it. */
export function themeCss(look: Look, addressOf: (file: string) => string): string {
  return [
    ...look.faces.map((face) => faceCss(face, addressOf)),
    lookBlocks(namesSetIn(look), (name, mode) => valueIn(look, name, mode)),
    paperCss(look),
    pageHeadCss(look),
    ...look.parts.map((part) => partCss(part)),
    '',
  ]
    .filter((text, at, all) => text !== '' || at === all.length - 1)
    .join('\n');
}

/** The same for a course in the layout of another site: nothing in it holds outside of the course. */
export function hostedThemeCss(look: Look, addressOf: (file: string) => string): string {
  return [
    ...look.faces.map((face) => faceCss(face, addressOf)),
    lookBlocks(namesSetIn(look), (name, mode) => valueIn(look, name, mode), 'hosted'),
    ...look.parts.map((part) => partCss(part, `${hostedScope} `)),
  ]
    .filter((text) => text !== '')
    .join('\n');
}

/** The same for the shadow of an element on other sites: of its colours, those that a look changes. */
export function hostCss(look: Look, names: readonly ColourName[]): string {
  const set = new Set(namesSetIn(look));
  return lookBlocks(
    names.filter((name) => set.has(name)),
    (name, mode) => colourIn(look, name, mode),
    'host',
  );
}

/** All that a theme sets anywhere: each is then said again for every mode, since the order of sheets decides. */
function namesSetIn({ colours, measures }: Look): PropertyName[] {
  const set = new Set<string>(
    [...Object.values(colours), ...Object.values(measures)].flatMap((values) =>
      Object.keys(values),
    ),
  );
  return [...colourNames, ...measureNames].filter((name) => set.has(name));
}

function valueIn(look: Look, name: PropertyName, mode: Mode): string | undefined {
  return isColour(name) ? colourIn(look, name, mode) : measureIn(look, name, mode);
}

/** What is laid out as on paper to count its pages (`browser/handout/measure.ts`) has the sizes of paper. */
function paperCss(look: Look): string {
  const sizes = measureNames.flatMap((name) => {
    const isSet = look.measures.screen[name] ?? look.measures.print[name];
    const value = isSet === undefined ? undefined : measureIn(look, name, 'print');
    return value === undefined ? [] : [`--${name}:${value}`];
  });
  return sizes.length === 0 ? '' : `:root.measuring{${sizes.join(';')}}`;
}

/** The heads of printed pages stand outside of the page, where its properties are not known. */
function pageHeadCss(look: Look): string {
  const face = look.measures.screen['text-face'];
  const value = measureIn(look, 'text-face', 'light');
  if (face === undefined || face.startsWith('var(') || value === undefined) return '';
  const boxes = ['top-left', 'top-center', 'top-right', 'bottom-center'];
  return `@page{${boxes.map((box) => `@${box}{font-family:${value}}`).join('')}}`;
}

export function faceCss(
  { family, files, weight, style, display, others }: FontFace,
  addressOf: (file: string) => string,
): string {
  const src = files.map(({ file, format }) => `url("${addressOf(file)}") format("${format}")`);
  const said: readonly Declaration[] = [
    ['font-family', JSON.stringify(family)],
    ['font-weight', weight],
    ['font-style', style],
    ['font-display', display],
    ['src', src.join(',')],
    ...others,
  ];
  return `@font-face{${said.map(write).join(';')}}`;
}

function write([name, value]: Declaration): string {
  return `${name}:${value}`;
}

const isColoured = /color|background|shadow|border/;

/** @param within what the part stands in, where that is not all of the page. */
function partCss({ part, pseudo, when, declarations }: PartRule, within = ''): string {
  const inPage = findPart(part)?.selector;
  if (inPage === undefined || declarations.length === 0) return '';
  const selector = within === '' ? inPage : inPage.replaceAll(/\bmain\b(?!-)/g, '.course-main');
  // No rule of ours has an id, so whatever is said of a part holds.
  const own = (root: string) => `${root}${within}:is(${selector}):not(#_)${pseudo}`;
  const rule = (selector: string, said: readonly Declaration[]) =>
    said.length === 0 ? '' : `${selector}{${said.map(write).join(';')}}`;
  if (when !== undefined && 'mode' in when) {
    const all = rule(own(''), declarations);
    if (when.mode === 'print') return `@media print{${all}}`;
    const query = `(prefers-color-scheme:${when.mode})`;
    const other = when.mode === 'dark' ? 'light' : 'dark';
    return [
      `@media screen and ${query}{${rule(own(`:root:not([data-theme="${other}"]) `), declarations)}}`,
      `@media screen{${rule(own(`:root[data-theme="${when.mode}"] `), declarations)}}`,
    ].join('\n');
  }
  // Paper has one colour, and no ground that would carry another.
  const coloured = declarations.filter(([name]) => isColoured.test(name));
  const plain = declarations.filter((one) => !coloured.includes(one));
  const inWidth = (css: string) =>
    css === '' || when === undefined ? css : `@media ${when.width}{${css}}`;
  return [
    inWidth(rule(own(''), plain)),
    inWidth(coloured.length === 0 ? '' : `@media screen{${rule(own(''), coloured)}}`),
  ]
    .filter((css) => css !== '')
    .join('\n');
}

/** The faces that the first lines of a page are set in, for the browser to fetch at once: at most two files. */
export function firstFontFiles(look: Look): string[] {
  const families = (['text-face', 'title-face'] as const).map((name) => firstFamily(look, name));
  const files = families.flatMap((family) => {
    const upright = look.faces.find((face) => face.family === family && face.style === 'normal');
    const [best] = upright?.files ?? [];
    return best === undefined ? [] : [best.file];
  });
  return [...new Set(files)];
}

/** The first family of a property, where the theme sets it. */
export function firstFamily(look: Look, name: 'text-face' | 'title-face'): string | undefined {
  const set = look.measures.screen[name];
  if (set === undefined || set === 'var(--text-face)')
    return name === 'title-face' ? firstFamily(look, 'text-face') : undefined;
  return /^"([^"]*)"/.exec(set)?.[1];
}
