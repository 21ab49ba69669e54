import { isDeepStrictEqual } from 'node:util';
import { type Document, isMap, isNode, parseDocument, stringify } from 'yaml';
import type { Place, Point } from '../../diagnostics/index.ts';
import type { MissingId } from '../types.ts';

/** The line of `course.yaml` that sets an id; `2026` and `true` are texts only in quotes. */
export function idLine(id: string): string {
  return `id: ${stringify(id).trim()}`;
}

/** Where a line can be inserted, as offsets in the text. */
interface Gap {
  readonly at: number;
  readonly before: string;
  readonly after: string;
}

/**
 * Where `course.yaml` lacks an `id`, and where a line for one goes: below the title, else before
 * it. Nothing where it has one, sound or not, or has no title that an id could be made from.
 */
export function findMissingId(
  { path, text }: { readonly path: string; readonly text: string },
  title: Place | undefined,
  pointAt: (offset: number) => Point,
): MissingId | undefined {
  if (title === undefined) return undefined;
  const document = parseDocument(text, { logLevel: 'error', uniqueKeys: false });
  if (document.errors.length > 0 || document.has('id')) return undefined;
  // YAML has more styles than this code foresees, so a gap counts only if a line there changes no other setting.
  const gap = gapsFor(document, text).find((each) => isSafe(document, text, each));
  if (gap === undefined) return { place: title };
  const point = pointAt(gap.at);
  const place = { file: path, start: point, end: point };
  return { place: title, gap: { place, before: gap.before, after: gap.after } };
}

function gapsFor(document: Document, text: string): Gap[] {
  const map = document.contents;
  const pair = isMap(map) ? map.items.find(({ key }) => String(key) === 'title') : undefined;
  const { key, value } = pair ?? {};
  if (!isNode(key) || !key.range || !isNode(value) || !value.range) return [];
  const [start] = key.range;
  const lineBreak = /\r\n|\n|\r/.exec(text)?.[0] ?? '\n';
  const lineStart = Math.max(text.lastIndexOf('\n', start - 1), text.lastIndexOf('\r', start - 1));
  const indent = text.slice(lineStart + 1, start);
  const inBraces = { at: start, before: '', after: ', ' };
  if (!/^ *$/.test(indent)) return [inBraces];
  const end = lineAfter(text, value.range[1]);
  return [
    end === undefined
      ? { at: text.length, before: lineBreak + indent, after: '' }
      : { at: end, before: indent, after: lineBreak },
    { at: start, before: '', after: lineBreak + indent },
    inBraces,
  ];
}

/** The start of the line after the one with the offset; a block scalar ends there itself. */
function lineAfter(text: string, offset: number): number | undefined {
  if (/[\r\n]/.test(text.charAt(offset - 1))) return offset;
  const found = /\r\n|\n|\r/.exec(text.slice(offset));
  return found === null ? undefined : offset + found.index + found[0].length;
}

function isSafe(document: Document, text: string, { at, before, after }: Gap): boolean {
  const longer = parseDocument(`${text.slice(0, at)}${before}id: x${after}${text.slice(at)}`, {
    logLevel: 'error',
    uniqueKeys: false,
  });
  if (longer.errors.length > 0) return false;
  return isDeepStrictEqual(longer.toJS(), { ...document.toJS(), id: 'x' });
}
