import type { Heading, RootContent } from 'mdast';
import type { Chapter } from '../../model/index.ts';

/** The headings of a chapter that divide it: not its title. */
export function headingsOf({ body }: Chapter): Heading[] {
  return body.children.filter((node): node is Heading => node.type === 'heading' && node.depth > 1);
}

/**
 * What stands below a heading of a chapter, up to the next that is as high. Its own headings rise
 * to the levels below a title. Notes and addresses that it names stay with it.
 */
export function narrowChapter(chapter: Chapter, heading: Heading): Chapter {
  const { body } = chapter;
  const from = body.children.indexOf(heading) + 1;
  const rest = body.children.slice(from);
  const to = rest.findIndex((node) => node.type === 'heading' && node.depth <= heading.depth);
  const part = rest.slice(0, to === -1 ? undefined : to);
  const named = body.children.filter((node) => isDefinition(node) && !part.includes(node));
  const rise = heading.depth - 1;
  const children = [...part, ...named].map((node): RootContent => {
    if (node.type !== 'heading') return node;
    return { ...node, depth: Math.max(2, node.depth - rise) as Heading['depth'] };
  });
  return { ...chapter, body: { ...body, children } };
}

function isDefinition({ type }: RootContent): boolean {
  return type === 'definition' || type === 'footnoteDefinition';
}
