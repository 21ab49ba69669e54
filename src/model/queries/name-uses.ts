import { placeOfNode } from '../place-of-node.ts';
import type { Block, Chapter, LabelUse } from '../types.ts';
import { walkTexts } from './walk-chapter.ts';

/** A use of a name, and what uses it. */
export interface UseOfName extends LabelUse {
  readonly by: 'block' | 'link' | 'same' | 'later';
}

/** Every place of a chapter that speaks of a named position: blocks, links, `:same` and `:later`. */
export function nameUses(chapter: Chapter): UseOfName[] {
  const uses: UseOfName[] = [];
  for (const block of chapter.blocks) {
    for (const use of usesOf(block)) uses.push({ ...use, by: 'block' });
  }
  walkTexts(chapter, (node) => {
    if (node.type === 'positionLink') {
      uses.push({ name: node.label, place: placeOfNode(node, chapter.file), by: 'link' });
    } else if (node.type === 'courseDirective' && (node.name === 'same' || node.name === 'later')) {
      uses.push({ name: node.argument, place: placeOfNode(node, chapter.file), by: node.name });
    }
  });
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
