import type { Code } from 'mdast';
import { lineStarts, type Place, type Point } from '../../diagnostics/index.ts';
import type { PlacedText } from '../types.ts';

/** A fenced block of the course language, with the way back from its texts to the file. */
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
  /** Values in curly quotation marks. They are read all the same; the place includes the marks. */
  readonly curly: readonly PlacedText[];
  /** The names of attributes that are written a second time. */
  readonly repeated: readonly PlacedText[];
  readonly closed: boolean;
  /** The signs that open it, which must close it too: three backticks or more, or tildes. */
  readonly marks: string;
}

/** The last alternative is for word processors, which curl quotation marks. */
const attribute =
  /([A-Za-z][\w-]*)\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s"'“”„‟‘’‚«»]+)|[“”„‟‘’‚«]([^"“”„‟‘’‚«»]*)[“”‟‘’»"])/y;

/** The file that a fence stands in. */
export interface FileText {
  readonly file: string;
  readonly text: string;
  readonly lineStarts: readonly number[];
  readonly pointAt: (offset: number) => Point;
}

/**
 * Reads the opening line of a fenced code block and maps its content to the file. Containers (quotes, lists) and
 * indentation are not part of the content, so each line is matched with its line of the file.
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
  const repeated: PlacedText[] = [];
  const curly: PlacedText[] = [];
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
  const marks = /^([`~])\1*/.exec(openingLine)?.[0] ?? '```';
  const lastLine = source.text.slice(lineStartAt(source, end), end);
  const contentLines = node.value === '' ? 0 : lineStarts(node.value).length;
  // An unclosed block may end with a line that only looks like a fence, such as `1. e4 ```.
  const closed =
    place.end.line - place.start.line > contentLines &&
    lastLine.replace(/^[ \t>]*/, '').startsWith(marks);
  return {
    place,
    opening: { file: source.file, start: place.start, end: source.pointAt(openingEnd) },
    content: node.value,
    pointAt: createContentLocator(node.value, place.start.line, source),
    attributes,
    curly,
    repeated,
    ...(unreadable ? { unreadable } : {}),
    closed,
    marks,
  };
}

function lineStartAt(source: FileText, offset: number): number {
  return source.lineStarts[source.pointAt(offset).line - 1] ?? 0;
}

interface AlignedLine {
  /** Offset in the content. */
  readonly start: number;
  readonly length: number;
  /** Of the line in the file, without its line end. */
  readonly fileStart: number;
  readonly fileEnd: number;
}

function createContentLocator(content: string, fenceLine: number, source: FileText) {
  let lines: AlignedLine[] | undefined;
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
    if (!line) return source.pointAt(0);
    // Count from the end of the line: containers and tabs change only its beginning.
    const at = line.fileEnd - line.length + offset - line.start;
    return source.pointAt(Math.max(line.fileStart, at));
  };
}

/** For each line of the content, the line of the file that it comes from. */
function alignLines(content: string, fenceLine: number, source: FileText): AlignedLine[] {
  const starts = lineStarts(content);
  return starts.map((start, index) => {
    const withEnd = content.slice(start, starts[index + 1]);
    const fileStart = source.lineStarts[fenceLine + index] ?? source.text.length;
    const line = source.text.slice(fileStart, source.lineStarts[fenceLine + index + 1]);
    return {
      start,
      length: withEnd.replace(/[\r\n]+$/, '').length,
      fileStart,
      fileEnd: fileStart + line.replace(/[\r\n]+$/, '').length,
    };
  });
}
