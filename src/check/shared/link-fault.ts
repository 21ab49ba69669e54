import type { PhrasingContent, RootContent } from 'mdast';
import { readPositionAddress } from '../../contract/index.ts';
import type { CourseView } from '../view/index.ts';

/** What is wrong with a link, and what to do. */
export interface LinkFault {
  readonly message: string;
  readonly hint: string;
}

/**
 * What is wrong with the `#…` of a link into a chapter: it names nothing that the chapter's page has, so it
 * leads to its top. `from` is the file of the chapter that the link stands in; news stands in none.
 */
export function linkFault(
  node: RootContent | PhrasingContent,
  course: CourseView,
  from?: string,
): LinkFault | undefined {
  if (node.type !== 'link') return undefined;
  const [, address = '', fragment] = /^([^?#]*)(?:\?[^#]*)?#(.+)$/s.exec(node.url) ?? [];
  const chapter = address === '' ? from : decoded(address);
  if (fragment === undefined || chapter === undefined) return undefined;
  const wanted = decoded(fragment);
  const missed = course.ask('missed', `${chapter}#${wanted}`);
  if (missed === undefined) return undefined;
  const { title, near } = missed;
  if (readPositionAddress(wanted) !== undefined) {
    return {
      message: `This leads to a position that “${title}” does not show.`,
      hint: 'Name a position that it shows with `:here[name]`, and link to it with `[text](pos:name)`.',
    };
  }
  return {
    message: `This leads to \`#${wanted}\`, and “${title}” has no heading and no position of that name.`,
    hint: near
      ? `Did you mean \`#${near}\`?`
      : 'Write a heading as its words in small letters, joined by hyphens; for a position, `[text](pos:name)`.',
  };
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
