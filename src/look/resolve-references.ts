import { type ColourName, defaultColour, type Mode, modes } from './defaults.ts';
import { referenceIn } from './read-value.ts';

type Colours = Record<Mode, Partial<Record<ColourName, string>>>;

/** Replaces each reference by its value in the mode. Reports and leaves out circles. */
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
