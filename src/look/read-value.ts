import { nearestName } from '../diagnostics/index.ts';
import { colourNames } from './defaults.ts';
import { cssTree, culori } from './libraries.ts';
import type { Property } from './properties.ts';

/** A value that can be used, as style sheets and pictures have it, or what is wrong with it. */
export type ReadValue =
  | { readonly value: string }
  | { readonly message: string; readonly hint: string };

/** @param text without white space around it. */
export function readValue(property: Property, text: string): ReadValue {
  const { type } = property;
  switch (type.is) {
    case 'colour':
      return readColour(text);
    case 'faces':
      return readFaces(property, text);
    case 'number': {
      const number = /^\+?(?:\d+\.?\d*|\.\d+)$/.test(text) ? Number(text) : Number.NaN;
      if (number >= type.least && number <= type.most) return { value: String(number) };
      return wrong(property, text, `a number from ${type.least} to ${type.most}`);
    }
    case 'length': {
      const [, digits = '', unit = ''] = /^\+?(\d+\.?\d*|\.\d+)([a-z]*)$/i.exec(text) ?? [];
      const inRoots = Number(digits) / (perRoot[unit.toLowerCase()] ?? Number.NaN);
      const isZero = digits !== '' && Number(digits) === 0 && type.least === 0;
      if (isZero) return { value: '0' };
      if (type.units.includes(unit.toLowerCase()) && inRoots >= type.least && inRoots <= type.most)
        return { value: `${Number(digits)}${unit.toLowerCase()}` };
      return wrong(
        property,
        text,
        `a length from ${type.least}rem to ${type.most}rem, in ${type.units.join(', ')}`,
      );
    }
  }
}

/** How many of a unit a root size of 16 pixels has. */
const perRoot: Readonly<Record<string, number>> = { rem: 1, px: 16, pt: 12 };

function wrong({ name }: Property, text: string, wanted: string): ReadValue {
  return {
    message: `\`--${name}\` is ${text === '' ? 'empty' : `\`${short(text)}\``}, and must be ${wanted}.`,
    hint: `Write ${wanted}.`,
  };
}

export function short(text: string): string {
  return text.length > 60 ? `${text.slice(0, 59)}…` : text;
}

/** A reference to another property: its name without the hyphens. */
export function referenceIn(text: string): string | undefined {
  return /^var\(\s*--([\w-]+)\s*\)$/.exec(text)?.[1];
}

/** A colour as six figures; a reference stays for `resolveReferences`. */
export function readColour(text: string): ReadValue {
  const other = referenceIn(text);
  if (other !== undefined) {
    if ((colourNames as readonly string[]).includes(other)) return { value: `var(--${other})` };
    const near = nearestName(other, colourNames);
    return {
      message: `There is no colour \`--${other}\`.`,
      hint: near ? `Did you mean \`--${near}\`?` : 'Write a colour, such as `#74211b`.',
    };
  }
  const { parse, formatHex } = culori();
  const colour = parse(text);
  if (colour === undefined) {
    return {
      message: `\`${short(text)}\` is no colour.`,
      hint: 'Write one such as `#74211b`, `rgb(116 33 27)`, `oklch(38% 0.12 28)` or a name of CSS.',
    };
  }
  if ((colour.alpha ?? 1) < 1) {
    return {
      message: `\`${short(text)}\` lets through what lies behind it, so nobody can tell how it looks.`,
      hint: 'Write the colour that it comes to, without transparency.',
    };
  }
  return { value: formatHex(colour) };
}

const generic = /^(?:serif|sans-serif|monospace|cursive|fantasy|system-ui|ui-[a-z-]+|math)$/i;

/** Names of type faces, each quoted that is not of CSS. */
function readFaces(property: Property, text: string): ReadValue {
  const other = referenceIn(text);
  const isOther = other === 'text-face' || other === 'title-face' || other === 'code-face';
  if (isOther && other !== property.name) return { value: `var(--${other})` };
  const { lexer, parse } = cssTree();
  const wanted = 'a list of type faces, such as `"Alegreya", serif`';
  try {
    const value = parse(text, { context: 'value' });
    if (lexer.match('<family-name>#', value).error) return wrong(property, text, wanted);
  } catch {
    return wrong(property, text, wanted);
  }
  const names = familiesIn(text).map((name) => (generic.test(name) ? name : quote(name)));
  return names.length === 0 ? wrong(property, text, wanted) : { value: names.join(', ') };
}

export function familiesIn(text: string): string[] {
  return [...text.matchAll(/"([^"]*)"|'([^']*)'|([^,"']+)/g)]
    .map(([, double, single, bare]) => double ?? single ?? (bare ?? '').replaceAll(/\s+/g, ' '))
    .map((name) => name.trim())
    .filter((name) => name !== '');
}

function quote(name: string): string {
  return `"${name.replaceAll(/["\\\n\r\f<>]/g, '')}"`;
}
