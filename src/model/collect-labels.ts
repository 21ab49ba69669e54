import type { PhrasingContent, RootContent } from 'mdast';
import type { Place } from '../diagnostics/index.ts';
import type { DirectiveNode, NodeRef } from '../read/index.ts';

/** Where a name is given: by its directive. */
export interface LabelSite {
  readonly name: string;
  readonly place: Place;
  readonly directive: DirectiveNode;
  /** The node, where a comment of the moves gives the name. */
  readonly at?: NodeRef;
}

export interface LabelSites {
  /** The first place of each name, in the order of the course. */
  readonly first: ReadonlyMap<string, LabelSite>;
  readonly repeated: readonly LabelSite[];
}

/** Sorts the places where names are given: in the order of the text, not of resolution. */
export function sortLabelSites(sites: readonly LabelSite[]): LabelSites {
  const first = new Map<string, LabelSite>();
  const repeated: LabelSite[] = [];
  for (const site of sites) {
    if (first.has(site.name)) repeated.push(site);
    else first.set(site.name, site);
  }
  return { first, repeated };
}

/** Walks text nodes in order, at any depth. */
export function walkText(
  nodes: readonly (RootContent | PhrasingContent)[],
  visit: (node: RootContent | PhrasingContent) => void,
): void {
  for (const node of nodes) {
    visit(node);
    if ('children' in node) walkText(node.children, visit);
  }
}
