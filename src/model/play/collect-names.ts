import type { PhrasingContent, RootContent } from 'mdast';
import { placeOfNode } from '../place-of-node.ts';
import { walkText } from '../walk-text.ts';
import { type ChapterInWork, type NameSite, textsOf } from './work.ts';

/** Finds where a chapter gives names, in the order of the text, not of resolution. */
export function collectNames(chapter: ChapterInWork): NameSite[] {
  const { syntax, blocks } = chapter;
  const sites: NameSite[] = [];
  const add = (
    node: RootContent | PhrasingContent,
    more: Pick<Extract<NameSite, { directive: unknown }>, 'at' | 'within'>,
  ) => {
    if (node.type !== 'courseDirective' || node.name !== 'here') return;
    const place = placeOfNode(node, syntax.file);
    sites.push({ name: node.argument, place, directive: node, chapter, ...more });
  };
  walkText(syntax.body.children, (node) => {
    add(node, {});
    const block = node.type === 'courseBlock' ? blocks[node.block] : undefined;
    if (!block) return;
    // Only the block's own tree has addresses; a name in an exercise's line is reported later.
    for (const { content, node: at } of block.tree.syntax.comments) {
      walkText(content, (inner) => add(inner, { at: { block, node: at } }));
    }
    for (const text of textsOf(block.syntax)) {
      walkText(text, (inner) => add(inner, { within: block }));
    }
  });
  return sites;
}
