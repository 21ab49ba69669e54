import {
  type Block,
  type Course,
  chapterAt,
  chapterIndex,
  type NodeRef,
} from '../../../model/index.ts';
import type { Strings } from '../../../strings/index.ts';
import type { Addresses } from '../addresses.ts';
import { nodeAt } from '../context.ts';
import { diagramNumbers } from '../diagram-numbers.ts';
import { numberedMove } from '../notation.ts';

/** Where a link of the course leads. */
export interface Target {
  /** The chapter's file. */
  readonly chapter: string;
  /** Id on the chapter's page; none for the chapter itself. */
  readonly id?: string;
}

/** The target of an address as chapter `from` writes it; nothing for what is no chapter's. */
export function targetOf(
  course: Course,
  addresses: Addresses,
  href: string,
  from: string,
): Target | undefined {
  const [file = '', id] = href.split('#');
  const chapter =
    file === '' ? from : course.chapters.find((known) => addresses.page(known.file) === file)?.file;
  if (chapter === undefined) return undefined;
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
      const number = numbers.get(`${chapter.file} ${block.key}`);
      if (number === undefined || block.kind !== 'diagram' || !block.position) continue;
      if (!diagramOf.has(block.position.key)) diagramOf.set(block.position.key, number);
    }
  }
  const { handout } = strings;

  return ({ chapter, id }: Target, from: string, words: string): string | undefined => {
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
