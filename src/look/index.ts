/** How a course looks: what `theme.css` may set, and what everything is unless it does. */
export { contrast } from './contrast.ts';
export { type ColourName, defaultColour, type Mode } from './defaults.ts';
export { colourIn, measureIn } from './effective.ts';
export { findLowContrasts } from './find-contrast.ts';
export { findOneMode } from './one-mode.ts';
export { pairs } from './pairs.ts';
export { parts } from './parts.ts';
export { type Group, groups, type Property, properties } from './properties.ts';
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
