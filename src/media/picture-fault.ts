import { createLocator } from '../diagnostics/index.ts';
import { findSvgFaults } from './svg-faults.ts';
import type { MediaFault } from './types.ts';

/** So many parts of a picture are named. */
const mostParts = 10;

/** Why an SVG is not published: the parts of it that a browser would run or fetch. */
export function findPictureFault(file: string, bytes: Uint8Array): MediaFault | undefined {
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return {
      message: `${file} is not published: it is not UTF-8.`,
      hint: 'Save it as UTF-8 in the program that it comes from.',
    };
  }
  const parts = findSvgFaults(text);
  if (parts.length === 0) return undefined;
  const pointAt = createLocator(text);
  const names = [...new Set(parts.map(({ what }) => what))];
  const rest = names.length > 4 ? [`${names.length - 3} more parts like these`] : [];
  const list = [...names.slice(0, rest.length > 0 ? 3 : 4), ...rest];
  return {
    message: `${file} is not published: it has ${new Intl.ListFormat('en').format(list)}.`,
    hint: 'A browser that opens the picture would run or fetch that. Export it again as a plain SVG, or as a PNG.',
    related: parts.slice(0, mostParts).map(({ what, start, end }) => ({
      place: { file, start: pointAt(start), end: pointAt(end) },
      message: `Here is ${what}.`,
    })),
  };
}
