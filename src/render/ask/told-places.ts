import { chapterIds } from '../../addresses/index.ts';
import {
  type Block,
  type Chapter,
  type Course,
  chapterAt,
  type NodeRef,
} from '../../model/index.ts';
import { diagramNumbers } from './diagram-numbers.ts';
import { nodeAt } from './node-at.ts';

/** Where a reader on paper finds the element with an id. */
export interface ToldPlace {
  /** The number of the diagram that it is, or that shows it. */
  readonly diagram?: number;
  /** The node in the moves. */
  readonly ref?: NodeRef;
}

export function toldPlace(course: Course, chapter: string, id: string): ToldPlace {
  const there = chapterAt(course, { chapter });
  const ref = there && placesIn(there).get(id);
  if (ref === undefined) return {};
  const node = nodeAt(course, ref);
  const own = diagramNumbers(course).get(`${chapter} ${ref.block}`);
  const diagram = own ?? (node?.position && diagramsByPosition(course).get(node.position.key));
  return { ...(diagram !== undefined && { diagram }), ...(node?.move && { ref }) };
}

const places = new WeakMap<Chapter, ReadonlyMap<string, NodeRef>>();

/** The nodes of a chapter's ids. */
function placesIn(chapter: Chapter): ReadonlyMap<string, NodeRef> {
  const known = places.get(chapter);
  if (known) return known;
  const found = new Map<string, NodeRef>();
  for (const ref of chapter.blocks.flatMap(refsOf)) {
    const id = chapterIds(chapter).ofNode({ key: ref.block }, ref.node);
    if (!found.has(id)) found.set(id, ref);
  }
  places.set(chapter, found);
  return found;
}

function refsOf({ chapter, key, ...block }: Block): NodeRef[] {
  const nodes = 'nodes' in block ? block.nodes.map((node) => node.index) : [0];
  return nodes.map((node) => ({ chapter, block: key, node }));
}

const diagrams = new WeakMap<Course, ReadonlyMap<string, number>>();

/** The first diagram of each position that one shows. */
function diagramsByPosition(course: Course): ReadonlyMap<string, number> {
  const known = diagrams.get(course);
  if (known) return known;
  const found = new Map<string, number>();
  for (const { file, blocks } of course.chapters) {
    for (const block of blocks) {
      const number = diagramNumbers(course).get(`${file} ${block.key}`);
      if (number === undefined || block.kind !== 'diagram' || !block.position) continue;
      if (!found.has(block.position.key)) found.set(block.position.key, number);
    }
  }
  diagrams.set(course, found);
  return found;
}
