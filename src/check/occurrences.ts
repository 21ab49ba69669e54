import type { Position } from '../chess/index.ts';
import type { Place } from '../diagnostics/index.ts';
import {
  type Block,
  type Chapter,
  type Course,
  type MoveNode,
  type NodeRef,
  walkText,
} from '../model/index.ts';
import { moveName } from './move-name.ts';

/** A node of the course with what stands around it. */
export interface Occurrence {
  readonly chapter: Chapter;
  readonly block: Block;
  readonly node: MoveNode;
  readonly parent: MoveNode | undefined;
}

/** @throws RangeError for a reference that is not of this course. */
export function occurrenceAt(course: Course, ref: NodeRef): Occurrence {
  const chapter = course.chapters[ref.chapter];
  const block = chapter?.blocks[ref.block];
  const node = block?.nodes[ref.node];
  if (!chapter || !block || !node) throw new RangeError(`no node ${JSON.stringify(ref)}`);
  const parent = node.parent === undefined ? undefined : block.nodes[node.parent];
  return { chapter, block, node, parent };
}

/** The move that led to the node; for a start position the first sign of its block. */
export function placeOf({ block, node }: Occurrence): Place {
  if (node.written) return node.written.place;
  const { start } = block.place;
  const end = { ...start, column: start.column + 1, offset: start.offset + 1 };
  return { file: block.place.file, start, end };
}

/** `After 7...Be7`, or `At the start of the block`: how a sentence about a position begins. */
export function after({ node, parent }: Pick<Occurrence, 'node' | 'parent'>): string {
  return node.written ? `After ${moveName(node, parent)}` : 'At the start of the block';
}

/** `in line 12`, `in chapters/2.md, line 41`, as seen from a place. */
export function whereIs(place: Place, from: Place): string {
  return place.file === from.file
    ? `in line ${place.start.line}`
    : `in ${place.file}, line ${place.start.line}`;
}

/** The names that the comments behind a node's move link to. */
export function linkedLabels(node: MoveNode): string[] {
  const labels: string[] = [];
  for (const item of node.after) {
    if (item.type !== 'comment') continue;
    walkText(item.content, (inner) => {
      if (inner.type === 'positionLink') labels.push(inner.label);
    });
  }
  return labels;
}

/** A named position; absent where the name does not exist or its move cannot be played. */
export function positionOfLabel(course: Course, name: string): Position | undefined {
  const ref = course.labels[name]?.ref;
  return ref && occurrenceAt(course, ref).node.position;
}
