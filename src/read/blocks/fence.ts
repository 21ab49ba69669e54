import type { Code } from 'mdast';
import { lineStarts, type Place, type Point } from '../../diagnostics/index.ts';
import { type Attributes, readAttributes } from './read-attributes.ts';

/** A fenced block of the course language, with the way back from its texts to the file. */
export interface Fence extends Attributes {
  readonly place: Place;
  /** The opening line without the block's content. */
  readonly opening: Place;
  readonly content: string;
  /** From an offset in `content` to its point in the file. */
  readonly pointAt: (offset: number) => Point;
  readonly closed: boolean;
  /** The signs that open it, which must close it too: three backticks or more, or tildes. */
  readonly marks: string;
}

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
  const infoEnd = /^[`~]+[ \t]*[^\s]*/.exec(openingLine)?.[0].length ?? openingLine.length;
  const placeOf = (from: number, to: number): Place => ({
    file: source.file,
    start: source.pointAt(start + from),
    end: source.pointAt(start + to),
  });
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
    ...readAttributes(openingLine, infoEnd, placeOf),
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
