import type { Course, LabelUse } from '../model/index.ts';
import { placeOfNode } from './place-of-node.ts';
import { walkTexts } from './walk-course.ts';

/** Every place that speaks of a named position: blocks, links, `:same` and `:later`. */
export function labelUses(course: Course): LabelUse[] {
  const uses: LabelUse[] = [];
  for (const chapter of course.chapters) {
    for (const block of chapter.blocks) {
      const use = block.kind === 'moves' ? block.from : block.at;
      if (use) uses.push(use);
    }
  }
  walkTexts(course, (node, chapter) => {
    if (node.type === 'positionLink') {
      uses.push({ name: node.label, place: placeOfNode(node, chapter) });
    } else if (node.type === 'courseDirective' && (node.name === 'same' || node.name === 'later')) {
      uses.push({ name: node.argument, place: placeOfNode(node, chapter) });
    }
  });
  return uses;
}
