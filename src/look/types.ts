/** What a theme gives: plain data, without places, so that equal themes are equal data. */
import type { Fix, Place } from '../diagnostics/index.ts';
import type { ColourName, MeasureName, Mode } from './defaults.ts';

/** The look of a course, where it differs from ours. */
export interface Look {
  /** Colours as six figures, by the mode that they are set in. */
  readonly colours: Readonly<Record<Mode, Readonly<Partial<Record<ColourName, string>>>>>;
  /** Sizes, weights and type faces: those set for all, and those set for paper alone. */
  readonly measures: Readonly<
    Record<'screen' | 'print', Readonly<Partial<Record<MeasureName, string>>>>
  >;
  readonly faces: readonly FontFace[];
  readonly parts: readonly PartRule[];
}

/** A type face from files of `media/`. */
export interface FontFace {
  readonly family: string;
  readonly files: readonly FontFile[];
  /** `400`, or a range for a variable one, `200 900`. */
  readonly weight: string;
  readonly style: string;
  readonly display: string;
  /** What else the rule says of it, such as `unicode-range`, as it is written. */
  readonly others: readonly Declaration[];
}

export interface FontFile {
  /** Relative to the course folder. */
  readonly file: string;
  readonly format: FontFormat;
}

export type FontFormat = 'woff2' | 'woff' | 'truetype' | 'opentype';

export type Declaration = readonly [property: string, value: string];

/** What a theme says of a named part of pages. */
export interface PartRule {
  readonly part: string;
  /** What follows the part, such as `::before`; empty for the part itself. */
  readonly pseudo: string;
  /** A mode, or a query of the window's width; absent where it always holds. */
  readonly when?: PartCondition;
  readonly declarations: readonly Declaration[];
}

export type PartCondition = { readonly mode: Mode } | { readonly width: string };

export interface ThemeSyntax {
  readonly look: Look;
  /** Where each property is set, by `placeKey`. */
  readonly places: Readonly<Record<string, Place>>;
  /** Colours that are set for a part: what they are held against is known from the part. */
  readonly partColours: readonly PartColour[];
  readonly problems: readonly ThemeProblem[];
}

/** A rule's colours for a part, by mode: what it does not set is the part's own. */
export interface PartColour {
  readonly part: string;
  readonly mode: Mode;
  readonly ink?: string;
  readonly ground?: string;
  readonly place: Place;
}

export interface ThemeProblem {
  readonly place: Place;
  readonly message: string;
  readonly hint: string;
  readonly fixes?: readonly Fix[];
}

/** Of a property that is set in a mode; what is no colour is set for screens or for paper. */
export function placeKey(name: string, mode: Mode | 'screen'): string {
  return `${mode} ${name}`;
}
