import { Resvg } from '@resvg/resvg-js';

/**
 * An SVG, ready to be rendered `width` image pixels wide, on white or another colour. No fonts are
 * read.
 * @throws Error for what is no SVG.
 */
export function readSvg(svg: string, width: number, background = '#ffffff'): Resvg {
  try {
    return new Resvg(svg, {
      background,
      fitTo: { mode: 'width', value: width },
      font: { loadSystemFonts: false },
    });
  } catch (cause) {
    const reason = cause instanceof Error ? cause.message : String(cause);
    throw new Error(`the SVG cannot be drawn: ${reason}`, { cause });
  }
}
