import type { Block, Course, NodeRef } from '../../../model/types.ts';
import type { Strings } from '../../../strings/index.ts';
import type { Addresses } from '../addresses.ts';
import { nodeAt } from '../context.ts';
import { diagramNumbers } from '../diagram-numbers.ts';
import { numberedMove } from '../notation.ts';

/** Where a link of the course leads. */
export interface Target {
  readonly chapter: number;
  /** Id on the chapter's page; none for the chapter itself. */
  readonly id?: string;
}

/** The target of an address as chapter `from` writes it; nothing for what is no chapter's. */
export function targetOf(
  course: Course,
  addresses: Addresses,
  href: string,
  from: number,
): Target | undefined {
  const [file = '', id] = href.split('#');
  const chapter =
    file === '' ? from : course.chapters.findIndex(({ index }) => addresses.page(index) === file);
  if (chapter < 0) return undefined;
  return { chapter, ...(id !== undefined && id !== '' && { id: decodeURIComponent(id) }) };
}

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
      const number = numbers[chapter.index]?.get(block.index);
      if (number === undefined || block.kind !== 'diagram' || !block.position) continue;
      if (!diagramOf.has(block.position.key)) diagramOf.set(block.position.key, number);
    }
  }
  const { handout } = strings;

  return ({ chapter, id }: Target, from: number, words: string): string | undefined => {
    const { title = '', index = 0 } = course.chapters[chapter] ?? {};
    const elsewhere = chapter !== from && !words.includes(title);
    const there = elsewhere ? [handout.chapter(index + 1)] : [];
    const ref = id === undefined ? undefined : refs.get(`${chapter}#${id}`);
    const node = ref && nodeAt(course, ref);
    const own = ref && numbers[chapter]?.get(ref.block);
    const diagram = own ?? (node?.position && diagramOf.get(node.position.key));
    if (diagram !== undefined) return handout.diagram(diagram);
    const move = node?.move && numberedMove(node.move, strings);
    if (move !== undefined && !words.includes(move)) there.push(strings.after(move));
    return there.length === 0 ? undefined : there.join(', ');
  };
}

function refsOf({ chapter, index, ...block }: Block): NodeRef[] {
  const nodes = 'nodes' in block ? block.nodes.map((node) => node.index) : [0];
  return nodes.map((node) => ({ chapter, block: index, node }));
}
