/** Red, green and blue of a colour as six figures, each from 0 to 255. */
function channels(colour: string): readonly [number, number, number] {
  const part = (at: number) => Number.parseInt(colour.slice(at, at + 2), 16);
  return [part(1), part(3), part(5)];
}

/** Relative luminance of an sRGB colour: WCAG 2.2, "relative luminance". */
function luminance(colour: string): number {
  const [red, green, blue] = channels(colour).map((channel) => {
    const value = channel / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/**
 * Contrast ratio of two colours, from 1 to 21: WCAG 2.2, "contrast ratio" (w3.org/TR/WCAG22/#dfn-contrast-ratio).
 * @param one as six figures, `#98281b`.
 */
export function contrast(one: string, other: string): number {
  const [a, b] = [luminance(one), luminance(other)];
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}

/** So much of one colour with the rest of another, as `color-mix(in srgb, …)` does. @param share from 0 to 1. */
export function mix(one: string, share: number, other: string): string {
  const rest = channels(other);
  const mixed = channels(one).map((channel, at) =>
    Math.round(channel * share + (rest[at] ?? 0) * (1 - share)),
  );
  return `#${mixed.map((channel) => channel.toString(16).padStart(2, '0')).join('')}`;
}
