import { type ColourName, defaultColour, type Mode, modes } from './defaults.ts';
import { referenceIn } from './read-value.ts';

type Colours = Record<Mode, Partial<Record<ColourName, string>>>;

/** Puts in the place of each reference what it comes to in its mode. One that runs in a circle is told and left out. */
export function resolveReferences(
  colours: Colours,
  onCircle: (name: ColourName, mode: Mode) => void,
): void {
  for (const mode of modes) {
    const resolved: Partial<Record<ColourName, string>> = {};
    for (const name of Object.keys(colours[mode]) as ColourName[]) {
      const value = follow(colours, name, mode, new Set());
      if (value === undefined) onCircle(name, mode);
      else resolved[name] = value;
    }
    colours[mode] = resolved;
  }
}

function follow(
  colours: Colours,
  name: ColourName,
  mode: Mode,
  seen: Set<ColourName>,
): string | undefined {
  if (seen.has(name)) return undefined;
  seen.add(name);
  const value = colours[mode][name] ?? defaultColour(name, mode);
  const other = referenceIn(value);
  return other === undefined ? value : follow(colours, other as ColourName, mode, seen);
}
