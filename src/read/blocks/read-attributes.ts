import type { Place } from '../../diagnostics/index.ts';
import type { PlacedText } from '../types.ts';

/** What the opening line of a block says behind its name. */
export interface Attributes {
  readonly attributes: ReadonlyMap<string, PlacedText & { readonly namePlace: Place }>;
  /** A stretch of the opening line that is no attribute. */
  readonly unreadable?: Place;
  /** Values in curly quotation marks. They are read all the same; the place includes the marks. */
  readonly curly: readonly PlacedText[];
  /** The names of attributes that are written a second time. */
  readonly repeated: readonly PlacedText[];
}

/** The last alternative is for word processors, which curl quotation marks. */
const attribute =
  /([A-Za-z][\w-]*)\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s"'“”„‟‘’‚«»]+)|[“”„‟‘’‚«]([^"“”„‟‘’‚«»]*)[“”‟‘’»"])/y;

/**
 * Reads the attributes of an opening line, as far as they can be read.
 * @param infoEnd offset behind the block's name.
 * @param placeOf the place of a range of the line.
 */
export function readAttributes(
  line: string,
  infoEnd: number,
  placeOf: (from: number, to: number) => Place,
): Attributes {
  const attributes = new Map<string, PlacedText & { namePlace: Place }>();
  const repeated: PlacedText[] = [];
  const curly: PlacedText[] = [];
  let unreadable: Place | undefined;
  let at = infoEnd;
  while (at < line.length) {
    if (/\s/.test(line.charAt(at))) {
      at++;
      continue;
    }
    attribute.lastIndex = at;
    const match = attribute.exec(line);
    if (!match) {
      unreadable = placeOf(at, line.trimEnd().length);
      break;
    }
    const name = match[1] ?? '';
    const text = match[2] ?? match[3] ?? match[4] ?? match[5] ?? '';
    const quote = match[4] === undefined ? 1 : 0;
    const valueEnd = attribute.lastIndex - quote;
    const namePlace = placeOf(at, at + name.length);
    if (match[5] !== undefined) {
      curly.push({ text, place: placeOf(valueEnd - text.length - 1, attribute.lastIndex) });
    }
    if (attributes.has(name)) repeated.push({ text: name, place: namePlace });
    else {
      const place = placeOf(valueEnd - text.length, valueEnd);
      attributes.set(name, { text, place, namePlace });
    }
    at = attribute.lastIndex;
  }
  return { attributes, curly, repeated, ...(unreadable ? { unreadable } : {}) };
}
