import { contrast, mix } from './contrast.ts';
import type { ColourName, Mode } from './defaults.ts';
import { colourIn, setIn } from './effective.ts';
import { asked, type Pair, type PairKind, pairs } from './pairs.ts';
import { findPart } from './parts.ts';
import { placeKey, type ThemeProblem, type ThemeSyntax } from './types.ts';

/** A pair of colours that is too alike. */
export interface LowContrast extends ThemeProblem {
  readonly kind: PairKind;
}

const modeWords: Readonly<Record<Mode, string>> = {
  light: 'on light screens',
  dark: 'on dark screens',
  print: 'on paper',
};

/** Every pair with a colour of the theme that has too little contrast. */
export function findLowContrasts({
  look,
  places,
  partColours,
}: Pick<ThemeSyntax, 'look' | 'places' | 'partColours'>): LowContrast[] {
  const found: LowContrast[] = [];
  for (const pair of pairs) {
    for (const mode of pair.modes) {
      // A pair of our own colours is checked by a test.
      const from = placeOf(pair.ink, mode) ?? placeOf(pair.ground, mode);
      if (from === undefined) continue;
      const fault = faultOf(pair, mode, (name) => colourIn(look, name, mode));
      if (fault) found.push({ ...fault, kind: pair.kind, place: from });
    }
  }
  for (const { part: name, mode, ink, ground, place } of partColours) {
    const part = findPart(name);
    if (part === undefined) continue;
    const [one, other] = [ink, ground].map((written, at) =>
      resolve(written ?? `var(--${at === 0 ? part.ink : part.ground})`, mode),
    ) as [string, string];
    const ratio = contrast(one, other);
    if (ratio >= asked.text.ratio) continue;
    found.push({
      kind: 'text',
      place,
      message: `The part \`${name}\` is hard to read ${modeWords[mode]}: ${one} on ${other} has a contrast of ${shown(ratio)} : 1, and ${asked.text.source}.`,
      hint: advice(one, other, asked.text.ratio),
    });
  }
  return found;

  function placeOf(colour: ColourName, mode: Mode): ThemeProblem['place'] | undefined {
    const from = setIn(look, colour, mode);
    return from && places[placeKey(colour, from)];
  }

  function resolve(written: string, mode: Mode): string {
    const other = /^var\(--([\w-]+)\)$/.exec(written)?.[1];
    return other === undefined ? written : colourIn(look, other as ColourName, mode);
  }
}

/** What is wrong with a pair in a mode; nothing where it is as it should be. */
export function faultOf(
  { ink, share = 1, ground, kind, shows }: Pair,
  mode: Mode,
  colourOf: (name: ColourName) => string,
): Pick<ThemeProblem, 'message' | 'hint'> | undefined {
  const [full, below] = [colourOf(ink), colourOf(ground)];
  const above = share === 1 ? full : mix(full, share, below);
  const ratio = contrast(above, below);
  const { ratio: wanted, source } = asked[kind];
  if (ratio >= wanted) return undefined;
  const mixed = share === 1 ? '' : `, mixed to ${above}`;
  return {
    message: `${upperFirst(shows)} ${verb(shows)} hard to ${kind === 'text' ? 'read' : 'see'} ${modeWords[mode]}: \`--${ink}\` (${full}${mixed}) on \`--${ground}\` (${below}) has a contrast of ${shown(ratio)} : 1, and ${source}.`,
    hint:
      share === 1
        ? advice(full, below, wanted)
        : 'Take a stronger colour for the text, or a paler ground.',
  };
}

/** Rounded down, so that what is too little is never shown as enough. */
function shown(ratio: number): string {
  return (Math.floor(ratio * 100) / 100).toFixed(2);
}

/** The colour nearest to the one there is that would do, towards black or white. */
function advice(ink: string, ground: string, wanted: number): string {
  const ways = (['#000000', '#ffffff'] as const).flatMap((end) => {
    for (let share = 0.98; share >= 0; share -= 0.02) {
      const colour = mix(ink, share, end);
      if (contrast(colour, ground) >= wanted) return [{ colour, share, end }];
    }
    return [];
  });
  const [best] = ways.sort((a, b) => b.share - a.share);
  if (best === undefined) return 'Choose a lighter or a darker ground.';
  return `${best.end === '#000000' ? 'A darker' : 'A lighter'} one would do: ${best.colour}.`;
}

function upperFirst(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function verb(shows: string): string {
  return /^(?:text|quiet text|the )/.test(shows) && !/squares/.test(shows) ? 'is' : 'are';
}
