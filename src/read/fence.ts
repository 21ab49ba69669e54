import type { Code } from 'mdast';
import type { Place, Point } from '../diagnostics/index.ts';
import type { PlacedText } from './types.ts';

/** A fenced block of the course language with the ways back from its texts to the file. */
export interface Fence {
  readonly place: Place;
  /** The opening line without the block's content. */
  readonly opening: Place;
  readonly content: string;
  /** From an offset in `content` to its point in the file. */
  readonly pointAt: (offset: number) => Point;
  readonly attributes: ReadonlyMap<string, PlacedText & { readonly namePlace: Place }>;
  /** A stretch of the opening line that is no attribute. */
  readonly unreadable?: Place;
  readonly closed: boolean;
}

const attribute = /([A-Za-z][\w-]*)\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s"']+))/y;

/** The file that a fence stands in. */
export interface FileText {
  readonly file: string;
  readonly text: string;
  readonly lineStarts: readonly number[];
  readonly pointAt: (offset: number) => Point;
}

/**
 * Reads what stands around a fenced code block. Containers (quotes, lists) and indentation are
 * not part of the content, so each line is matched with its line of the file.
 */
export function readFence(node: Code, source: FileText): Fence {
  const start = node.position?.start.offset ?? 0;
  const end = node.position?.end.offset ?? start;
  const place: Place = {
    file: source.file,
    start: source.pointAt(start),
    end: source.pointAt(end),
  };
  const openingEnd = start + source.text.slice(start).search(/\r|\n|$/);
  const openingLine = source.text.slice(start, openingEnd);
  const infoStart = /^[`~]+[ \t]*[^\s]*/.exec(openingLine)?.[0].length ?? openingLine.length;
  const attributes = new Map<string, PlacedText & { namePlace: Place }>();
  const placeOf = (from: number, to: number): Place => ({
    file: source.file,
    start: source.pointAt(start + from),
    end: source.pointAt(start + to),
  });
  let unreadable: Place | undefined;
  let at = infoStart;
  while (at < openingLine.length) {
    if (/\s/.test(openingLine.charAt(at))) {
      at++;
      continue;
    }
    attribute.lastIndex = at;
    const match = attribute.exec(openingLine);
    if (!match) {
      unreadable = placeOf(at, openingLine.trimEnd().length);
      break;
    }
    const name = match[1] ?? '';
    const text = match[2] ?? match[3] ?? match[4] ?? '';
    const quote = match[4] === undefined ? 1 : 0;
    const valueEnd = attribute.lastIndex - quote;
    attributes.set(name, {
      text,
      place: placeOf(valueEnd - text.length, valueEnd),
      namePlace: placeOf(at, at + name.length),
    });
    at = attribute.lastIndex;
  }
  const fence = /^([`~])\1*/.exec(openingLine)?.[0] ?? '```';
  const lastLine = source.text.slice(lineStartAt(source, end), end);
  const closed = place.end.line > place.start.line && lastLine.trimEnd().endsWith(fence);
  return {
    place,
    opening: { file: source.file, start: place.start, end: source.pointAt(openingEnd) },
    content: node.value,
    pointAt: createContentLocator(node.value, place.start.line, source),
    attributes,
    ...(unreadable ? { unreadable } : {}),
    closed,
  };
}

function lineStartAt(source: FileText, offset: number): number {
  return source.lineStarts[source.pointAt(offset).line - 1] ?? 0;
}

function createContentLocator(content: string, fenceLine: number, source: FileText) {
  let lines: { start: number; fileOffset: number }[] | undefined;
  return (offset: number): Point => {
    lines ??= alignLines(content, fenceLine, source);
    let low = 0;
    let high = lines.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((lines[middle]?.start ?? 0) <= offset) low = middle;
      else high = middle - 1;
    }
    const line = lines[low];
    return source.pointAt((line?.fileOffset ?? 0) + offset - (line?.start ?? 0));
  };
}

/** For each line of the content: where it starts in the content and in the file. */
function alignLines(content: string, fenceLine: number, source: FileText) {
  const aligned: { start: number; fileOffset: number }[] = [];
  let start = 0;
  let fileLine = fenceLine;
  for (const match of content.matchAll(/([^\r\n]*)(\r\n|\r|\n|$)/g)) {
    const fileStart = source.lineStarts[fileLine] ?? source.text.length;
    const nextStart = source.lineStarts[fileLine + 1] ?? source.text.length;
    const full = source.text.slice(fileStart, nextStart).replace(/[\r\n]+$/, '');
    const line = match[1] ?? '';
    aligned.push({ start, fileOffset: fileStart + Math.max(0, full.length - line.length) });
    start += match[0].length;
    fileLine++;
    if (match[2] === '') break;
  }
  return aligned;
}
