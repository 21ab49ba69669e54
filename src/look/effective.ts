import {
  type ColourName,
  colours,
  defaultColour,
  defaultMeasure,
  fallbackFaces,
  type MeasureName,
  type Mode,
  type PropertyName,
  signFaces,
} from './defaults.ts';
import { properties } from './properties.ts';
import type { Look } from './types.ts';

const coverColours: ReadonlySet<string> = new Set(
  properties.filter(({ group }) => group === 'cover').map(({ name }) => name),
);

/** Where a colour of a mode comes from: a mode that the look sets it in, or nowhere. */
export function setIn(look: Look, name: ColourName, mode: Mode): Mode | undefined {
  if (look.colours[mode][name] !== undefined) return mode;
  if (mode !== 'dark' || !coverColours.has(name)) return undefined;
  // A cover and its text go together: without a dark one, the light one serves.
  const isSaid = [...coverColours].some(
    (one) => look.colours.dark[one as ColourName] !== undefined,
  );
  return !isSaid && look.colours.light[name] !== undefined ? 'light' : undefined;
}

/** What colour something has in a mode, as six figures. */
export function colourIn(look: Look | undefined, name: ColourName, mode: Mode): string {
  const from = look && setIn(look, name, mode);
  return (from && look.colours[from][name]) ?? defaultColour(name, mode);
}

/** A size, weight or type face as a style sheet has it; faces with what stands in for them. */
export function measureIn(
  look: Look | undefined,
  name: MeasureName,
  mode: Mode,
): string | undefined {
  const where = mode === 'print' ? 'print' : 'screen';
  if (mode === 'dark') return undefined;
  const own = look?.measures[where][name];
  if (own === undefined) return defaultMeasure(name, mode);
  if (!isFace(name) || own.startsWith('var(')) return own;
  if (name === 'code-face') return `${own}, monospace`;
  // A list that ends with a generic family needs no fallback of ours.
  const hasKind = !own.endsWith('"');
  return hasKind ? `${own}, ${signFaces}` : `${own}, ${fallbackFaces}, ${signFaces}, serif`;
}

function isFace(name: MeasureName): boolean {
  return name.endsWith('-face');
}

export function isColour(name: PropertyName): name is ColourName {
  return name in colours;
}
