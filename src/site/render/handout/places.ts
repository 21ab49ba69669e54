import {
  type Block,
  type Course,
  chapterAt,
  chapterIndex,
  type NodeRef,
} from '../../../model/index.ts';
import {
  type Addresses,
  diagramNumbers,
  nodeAt,
  numberedMove,
  type Target,
} from '../../../render/index.ts';
import type { Strings } from '../../../strings/index.ts';

/**
 * Tells a reader on paper where to look for a target: `diagram 12`, `chapter 3, after 7...Be7`.
 * What the link's own words say already is not said twice, and then there is nothing to tell.
 */
export function placeTeller(course: Course, addresses: Addresses, strings: Strings) {
  const refs = new Map<string, NodeRef>();
  const numbers = diagramNumbers(course);
  const diagramOf = new Map<string, number>();
  for (const chapter of course.chapters) {
    for (const block of chapter.blocks) {
      for (const ref of refsOf(block)) {
        const key = `${ref.chapter}#${addresses.id(ref)}`;
        if (!refs.has(key)) refs.set(key, ref);
      }
      const number = numbers.get(`${chapter.file} ${block.key}`);
      if (number === undefined || block.kind !== 'diagram' || !block.position) continue;
      if (!diagramOf.has(block.position.key)) diagramOf.set(block.position.key, number);
    }
  }
  const { handout } = strings;

  return (target: Target, from: string, words: string): string | undefined => {
    if (target.to !== 'place' && target.to !== 'chapter') return undefined;
    const chapter = target.to === 'place' ? target.ref.chapter : target.chapter;
    const id = target.to === 'place' ? addresses.id(target.ref) : target.id;
    const { title = '' } = chapterAt(course, { chapter }) ?? {};
    const elsewhere = chapter !== from && !words.includes(title);
    const there = elsewhere ? [handout.chapter(chapterIndex(course, chapter) + 1)] : [];
    const ref = id === undefined ? undefined : refs.get(`${chapter}#${id}`);
    const node = ref && nodeAt(course, ref);
    const own = ref && numbers.get(`${chapter} ${ref.block}`);
    const diagram = own ?? (node?.position && diagramOf.get(node.position.key));
    if (diagram !== undefined) return handout.diagram(diagram);
    const move = node?.move && numberedMove(node.move, strings);
    if (move !== undefined && !words.includes(move)) there.push(strings.after(move));
    return there.length === 0 ? undefined : there.join(', ');
  };
}

function refsOf({ chapter, key, ...block }: Block): NodeRef[] {
  const nodes = 'nodes' in block ? block.nodes.map((node) => node.index) : [0];
  return nodes.map((node) => ({ chapter, block: key, node }));
}
