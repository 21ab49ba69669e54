import type { Link, PhrasingContent, RootContent } from 'mdast';
import { readPositionAddress } from '../../contract/index.ts';
import { type Finding, type Place, pointBehind } from '../../diagnostics/index.ts';
import { placeOfNode } from '../../model/index.ts';
import { decodeAddress } from '../../read/index.ts';
import type { CourseView } from '../view/index.ts';

/**
 * What is wrong with the `#…` of a link into a chapter: it names nothing that the chapter's page has, so it
 * leads to its top. `file` is where the link stands, `from` the same if that is a chapter.
 */
export function linkFault(
  node: RootContent | PhrasingContent,
  course: CourseView,
  { file, from }: { readonly file: string; readonly from?: string },
): Finding | undefined {
  if (node.type !== 'link') return undefined;
  const [, address = '', fragment] = /^([^?#]*)(?:\?[^#]*)?#(.+)$/s.exec(node.url) ?? [];
  const chapter = address === '' ? from : decodeAddress(address);
  if (fragment === undefined || chapter === undefined) return undefined;
  const wanted = decodeAddress(fragment);
  const missed = course.ask('missed', `${chapter}#${wanted}`);
  if (missed === undefined) return undefined;
  const { title, near } = missed;
  const place = placeOfFragment(node, fragment, file);
  if (readPositionAddress(wanted) !== undefined) {
    return {
      place,
      message: `This leads to a position that “${title}” does not show.`,
      hint: 'Name a position that it shows with `:here[name]`, and link to it with `[text](pos:name)`.',
    };
  }
  return {
    place,
    message: `This leads to \`#${wanted}\`, and “${title}” has no heading and no position of that name.`,
    hint: near
      ? `Did you mean \`#${near}\`?`
      : 'Write a heading as its words in small letters, joined by hyphens; for a position, `[text](pos:name)`.',
  };
}

/** From the `#` on; the whole link where its address stands elsewhere. */
function placeOfFragment(node: Link, fragment: string, file: string): Place {
  const range = node.data?.urlRange;
  if (range === undefined) return placeOfNode(node, file);
  return { file, start: pointBehind(range.end, -fragment.length - 1), end: range.end };
}
