/** How a course looks: what `theme.css` may set, and what everything is unless it does. */
export {
  type ColourName,
  defaultColour,
  type Mode,
  modes,
  type PropertyName,
} from './defaults.ts';
export { type Property, properties, type ValueType } from './properties.ts';
