import type { SatoriOptions } from 'satori';
import { cardFontFamily, cardFonts } from './fonts.ts';

/** A piece of a layout, as satori takes it. */
export interface TextBox {
  readonly type: 'div';
  readonly props: {
    readonly id?: string;
    readonly lang?: string;
    readonly style: Readonly<Record<string, string | number>>;
    readonly children?: string | readonly TextBox[];
  };
}

export interface SetText {
  /** The text as outlines in an SVG document. */
  readonly svg: string;
  /** Size in pixels that each box with an `id` came to. */
  readonly boxes: ReadonlyMap<string, { readonly width: number; readonly height: number }>;
  /** The signs that no font has; they are drawn as empty boxes. */
  readonly missing: ReadonlySet<string>;
}

/** A box of text or of other boxes. */
export function textBox(
  style: Readonly<Record<string, string | number>>,
  children: string | readonly TextBox[] = [],
  names: { readonly id?: string; readonly lang?: string } = {},
): TextBox {
  return { type: 'div', props: { ...names, style: { display: 'flex', ...style }, children } };
}

/** Sets text in Source Serif 4, `width` pixels wide; as high as it needs unless `height` is given. */
export async function setText(box: TextBox, width: number, height?: number): Promise<SetText> {
  // A build whose pictures are all kept sets no text, and need not load it.
  const { default: satori } = await import('satori');
  const boxes = new Map<string, { width: number; height: number }>();
  const missing = new Set<string>();
  const options: SatoriOptions = {
    width,
    ...(height !== undefined && { height }),
    // Always the same arrays: satori keeps the parsed fonts by their identity.
    fonts: cardFonts(wordsOf(box)),
    loadAdditionalAsset: async (_kind, text) => {
      for (const { segment } of new Intl.Segmenter().segment(text)) missing.add(segment);
      return [];
    },
    onNodeDetected: ({ props, width, height }) => {
      if (typeof props.id === 'string') boxes.set(props.id, { width, height });
    },
  };
  const whole = textBox({ width: '100%', height: '100%', fontFamily: cardFontFamily }, [box]);
  return { svg: await satori(whole, options), boxes, missing };
}

function wordsOf({ props: { children = '' } }: TextBox): string {
  return typeof children === 'string' ? children : children.map(wordsOf).join('');
}
