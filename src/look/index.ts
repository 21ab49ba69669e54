/** How a course looks: what `theme.css` may set, and what everything is unless it does. */
export { contrast, mix } from './contrast.ts';
export {
  type ColourName,
  colourNames,
  defaultColour,
  type Mode,
  modes,
  type PropertyName,
} from './defaults.ts';
export { colourIn, measureIn } from './effective.ts';
export { findLowContrasts, type LowContrast } from './find-contrast.ts';
export { findOneMode } from './one-mode.ts';
export { asked, type PairKind, pairs } from './pairs.ts';
export { type Part, parts } from './parts.ts';
export { type Group, groups, type Property, properties, type ValueType } from './properties.ts';
export { readTheme } from './read-theme.ts';
export {
  faceCss,
  firstFamily,
  firstFontFiles,
  hostCss,
  hostedThemeCss,
  themeCss,
} from './theme-css.ts';
export type * from './types.ts';
