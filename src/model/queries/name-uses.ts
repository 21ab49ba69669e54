import type { Place } from '../../diagnostics/index.ts';
import { placeOfNode } from '../place-of-node.ts';
import type { Block, Chapter, LabelUse } from '../types.ts';
import { textNodes } from './walk-chapter.ts';

/** A use of a name, and what uses it. */
export interface UseOfName extends LabelUse {
  readonly by: 'block' | 'link' | 'same' | 'later';
  /** The place of the name itself; for a link whose address is elsewhere, of the whole link. */
  readonly written: Place;
}

/** Every use of a named position in a chapter: by blocks, links, `:same` and `:later`. */
export function nameUses(chapter: Chapter): UseOfName[] {
  const uses: UseOfName[] = [];
  for (const block of chapter.blocks) {
    for (const use of usesOf(block)) uses.push({ ...use, by: 'block', written: use.place });
  }
  for (const node of textNodes(chapter, 'positionLink')) {
    const written = { file: chapter.file, ...node.labelRange };
    uses.push({ name: node.label, place: placeOfNode(node, chapter.file), by: 'link', written });
  }
  for (const node of textNodes(chapter, 'courseDirective')) {
    if (node.name !== 'same' && node.name !== 'later') continue;
    const written = { file: chapter.file, ...node.argumentRange };
    const place = placeOfNode(node, chapter.file);
    uses.push({ name: node.argument, place, by: node.name, written });
  }
  return uses;
}

function usesOf(block: Block): readonly LabelUse[] {
  switch (block.kind) {
    case 'moves':
      return block.from ? [block.from] : [];
    case 'diagram':
    case 'exercise':
      return block.at ? [block.at] : [];
    case 'game':
      return block.unknownLimits.filter(({ name }) => !/^\d+$/.test(name));
    case 'pattern':
      return [...block.at, ...block.except];
  }
}
