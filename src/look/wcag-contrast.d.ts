/** For tests: the package has no types of its own. */
declare module 'wcag-contrast' {
  /** Contrast ratio of two colours as six figures. */
  export function hex(one: string, other: string): number;
}
