import { createRequire } from 'node:module';
import type { Resvg } from '@resvg/resvg-js';

/**
 * An SVG, ready to be rendered `width` image pixels wide, on white or another colour. No fonts are
 * read.
 * @throws Error for what is no SVG.
 */
export function readSvg(svg: string, width: number, background = '#ffffff'): Resvg {
  // Native code is loaded by the first picture, not by whatever may draw one.
  const resvg: typeof import('@resvg/resvg-js') = createRequire(import.meta.url)('@resvg/resvg-js');
  try {
    return new resvg.Resvg(svg, {
      background,
      fitTo: { mode: 'width', value: width },
      font: { loadSystemFonts: false },
    });
  } catch (cause) {
    const reason = cause instanceof Error ? cause.message : String(cause);
    throw new Error(`the SVG cannot be drawn: ${reason}`, { cause });
  }
}
