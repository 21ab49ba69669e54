import type { Image, Link } from 'mdast';
import type { Place } from '../../diagnostics/index.ts';
import type { Range } from '../nodes.ts';
import { placeOf, type TextContext } from '../text-context.ts';

/** What comes between the words of a link and its address. */
const opening = /\]\(\s*<?$/;

/**
 * Where the address of a link or a picture stands; nothing where it stands elsewhere, as of `[text][name]`, or where the
 * file spells it otherwise, as an escape does.
 */
export function urlRange(
  node: Link | Image,
  { source }: Pick<TextContext, 'source'>,
): Range | undefined {
  const { url } = node;
  const { start, end } = placeOf(node, { source });
  const text = source.text.slice(start.offset, end.offset);
  // The words may contain the address too, and so may the title.
  const words = 'children' in node ? node.children.at(-1)?.position?.end.offset : undefined;
  let at = words === undefined || text === `<${url}>` ? 0 : words - start.offset;
  do at = text.indexOf(url, at + 1);
  while (at > 1 && !opening.test(text.slice(Math.max(0, at - 10), at)));
  if (url === '' || at < 1) return undefined;
  const first = start.offset + at;
  return { start: source.pointAt(first), end: source.pointAt(first + url.length) };
}

/** Of what is wrong with an address: its file, without what follows it; the whole node where it cannot be told. */
export function placeOfUrl(node: Link | Image, context: TextContext): Place {
  const place = placeOf(node, context);
  const range = urlRange(node, context);
  if (range === undefined) return place;
  const file = node.url.replace(/[?#].*$/s, '');
  return { ...place, ...range, end: context.source.pointAt(range.start.offset + file.length) };
}
