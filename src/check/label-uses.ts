import { type Block, type Course, type LabelUse, placeOfNode } from '../model/index.ts';
import { walkTexts } from './walk-course.ts';

/** A use of a name, and what uses it. */
export interface UseOfLabel extends LabelUse {
  readonly by: 'block' | 'link' | 'same' | 'later';
}

/** Every place that speaks of a named position: blocks, links, `:same` and `:later`. */
export function labelUses(course: Course): UseOfLabel[] {
  const uses: UseOfLabel[] = [];
  for (const chapter of course.chapters) {
    for (const block of chapter.blocks) {
      for (const use of usesOf(block)) uses.push({ ...use, by: 'block' });
    }
  }
  walkTexts(course, (node, chapter) => {
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
      return block.at;
  }
}
