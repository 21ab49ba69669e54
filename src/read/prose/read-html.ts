import { createRequire } from 'node:module';
import type { Html } from 'mdast';
import type { DefaultTreeAdapterTypes } from 'parse5';
import { parseSrcset, stringifySrcset } from 'srcset';
import type { Place } from '../../diagnostics/index.ts';
import { fileAddress } from '../links/file-address.ts';
import { resolveLink } from '../links/resolve-link.ts';
import { resolveMedia } from '../links/resolve-media.ts';
import { placeOf, type TextContext, takeMediaAt } from '../text-context.ts';
import { reportUnclosedHtml } from './report-unclosed-html.ts';

const require = createRequire(import.meta.url);

type Problem = { readonly message: string; readonly hint: string };
/** What becomes of an address: a new one, a problem, or nothing if it stays as it is. */
type Resolution = { readonly value?: string } | { readonly problem: Problem };
type Reader = (value: string, context: TextContext, place: Place) => Resolution;

/** The attributes that name files of the course (HTML, 4.5 to 4.8), and how each is read. */
const readers: Readonly<Record<string, Readonly<Record<string, Reader>>>> = {
  a: { href: readHref },
  area: { href: readHref },
  img: { src: readSource, srcset: readSources },
  source: { src: readSource, srcset: readSources },
  video: { src: readSource, poster: readSource },
  audio: { src: readSource },
  track: { src: readSource },
};

/**
 * Reads an author's HTML in a chapter. Files of the course that it names are found and published, as with links and
 * pictures in Markdown, and missing ones are reported; their addresses become paths from the course folder. All else
 * stays, for the renderer to sanitise.
 */
export function readHtml(node: Html, context: TextContext): Html {
  reportUnclosedHtml(node, context);
  // Most HTML in chapters names no file and needs no parser, and loading one takes as long as a small check.
  if (!/\b(?:src|srcset|href|poster)\s*=/i.test(node.value)) return node;
  const { parseFragment } = require('parse5') as typeof import('parse5');
  const edits: { readonly start: number; readonly end: number; readonly text: string }[] = [];
  const find = createFinder(node, context);
  for (const element of elementsOf(parseFragment(node.value, { sourceCodeLocationInfo: true }))) {
    const reads = readers[element.tagName];
    for (const { name, value } of reads ? element.attrs : []) {
      const location = element.sourceCodeLocation?.attrs?.[name];
      const read = reads?.[name];
      if (!read || !location) continue;
      const { startOffset: start, endOffset: end } = location;
      const place = find(node.value.slice(start, end));
      const answer = read(value.trim(), context, place);
      if ('problem' in answer) context.report({ place, ...answer.problem });
      else if (answer.value !== undefined) {
        edits.push({ start, end, text: `${name}="${escapeValue(answer.value)}"` });
      }
    }
  }
  return edits.length === 0 ? node : { ...node, value: withEdits(node.value, edits) };
}

function readSource(value: string, context: TextContext, place: Place): Resolution {
  const resolved = resolveMedia(value, context.source.file, context.media);
  if ('problem' in resolved) return resolved;
  takeMediaAt(resolved.path, place, context);
  return { value: fileAddress(resolved.path) };
}

function readSources(value: string, context: TextContext, place: Place): Resolution {
  let candidates: ReturnType<typeof parseSrcset>;
  try {
    candidates = parseSrcset(value);
  } catch {
    return {
      problem: {
        message: 'This list of pictures cannot be read.',
        hint: 'Write it as `srcset="media/a.png, media/b.png 2x"`.',
      },
    };
  }
  const found: ReturnType<typeof parseSrcset> = [];
  for (const candidate of candidates) {
    const answer = readSource(candidate.url, context, place);
    if ('problem' in answer) return answer;
    found.push({ ...candidate, url: answer.value ?? candidate.url });
  }
  return { value: stringifySrcset(found) };
}

function readHref(value: string, context: TextContext, place: Place): Resolution {
  const { source, chapters, media } = context;
  if (/^pos:/i.test(value)) {
    return {
      problem: {
        message: 'A link to a position cannot be written as HTML.',
        hint: 'Write `[text](pos:name)`.',
      },
    };
  }
  if (!chapters) return {};
  const resolved = resolveLink(value, source.file, { chapters, media });
  if ('problem' in resolved) return resolved;
  if (resolved.media === undefined) return resolved.url === value ? {} : { value: resolved.url };
  takeMediaAt(resolved.media, place, context);
  return { value: resolved.url };
}

/** All elements in the order of the text, also those inside a `template`. */
function* elementsOf(
  root: DefaultTreeAdapterTypes.ParentNode,
): Generator<DefaultTreeAdapterTypes.Element> {
  const open = [...root.childNodes].reverse();
  for (let node = open.pop(); node; node = open.pop()) {
    if (!('tagName' in node)) continue;
    yield node;
    const inner = 'content' in node ? node.content.childNodes : node.childNodes;
    for (const child of inner.toReversed()) open.push(child);
  }
}

/**
 * Finds the places of attributes in the file, in the order of the text. In a quote or a list, lines of the file begin
 * with characters that the HTML does not have.
 */
function createFinder(node: Html, context: TextContext) {
  const whole = placeOf(node, context);
  const { text, pointAt } = context.source;
  let from = whole.start.offset;
  return (attribute: string) => {
    const start = text.indexOf(attribute, from);
    if (start < 0 || start >= whole.end.offset) return whole;
    from = start + attribute.length;
    return { file: whole.file, start: pointAt(start), end: pointAt(from) };
  };
}

function withEdits(
  value: string,
  edits: readonly { readonly start: number; readonly end: number; readonly text: string }[],
): string {
  let result = '';
  let done = 0;
  for (const { start, end, text } of [...edits].sort((a, b) => a.start - b.start)) {
    result += value.slice(done, start) + text;
    done = end;
  }
  return result + value.slice(done);
}

function escapeValue(value: string): string {
  return value.replaceAll('&', '&amp;').replaceAll('"', '&quot;');
}
