import type { PhrasingContent, RootContent } from 'mdast';
import type { Place } from '../diagnostics/index.ts';
import type { ChapterDraft, DirectiveNode, NodeRef } from '../read/index.ts';
import { type BlockInWork, textsOfDraft } from './block-in-work.ts';
import { placeOfNode } from './place-of-node.ts';
import { walkText } from './walk-text.ts';

/** Where a name is given: by its directive. */
export interface LabelSite {
  readonly name: string;
  readonly place: Place;
  readonly directive: DirectiveNode;
  readonly chapter: number;
  /** The node, where a comment of the moves gives the name. */
  readonly at?: NodeRef;
  /** The block, where its caption or question gives the name. */
  readonly within?: number;
}

export interface LabelSites {
  /** The first place of each name, in the order of the course. */
  readonly first: ReadonlyMap<string, LabelSite>;
  readonly repeated: readonly LabelSite[];
}

interface ChapterTexts {
  readonly draft: ChapterDraft;
  readonly blocks: readonly BlockInWork[];
}

/** Finds the places where names are given: in the order of the text, not of resolution. */
export function collectLabels(chapters: readonly ChapterTexts[]): LabelSites {
  const first = new Map<string, LabelSite>();
  const repeated: LabelSite[] = [];
  for (const site of collectSites(chapters)) {
    if (first.has(site.name)) repeated.push(site);
    else first.set(site.name, site);
  }
  return { first, repeated };
}

function collectSites(chapters: readonly ChapterTexts[]): LabelSite[] {
  const sites: LabelSite[] = [];
  for (const [chapter, { draft, blocks }] of chapters.entries()) {
    const add = (node: RootContent | PhrasingContent, more: Pick<LabelSite, 'at' | 'within'>) => {
      if (node.type !== 'courseDirective' || node.name !== 'here') return;
      const place = placeOfNode(node, draft.file);
      sites.push({ name: node.argument, place, directive: node, chapter, ...more });
    };
    walkText(draft.body.children, (node) => {
      add(node, {});
      const block = node.type === 'courseBlock' ? blocks[node.block] : undefined;
      if (node.type !== 'courseBlock' || !block) return;
      // Only the block's own tree has addresses; a name in an exercise's line is reported later.
      for (const { content, node: at } of block.tree.comments) {
        walkText(content, (inner) => add(inner, { at: { chapter, block: node.block, node: at } }));
      }
      for (const text of textsOfDraft(block.draft)) {
        walkText(text, (inner) => add(inner, { within: node.block }));
      }
    });
  }
  return sites;
}
