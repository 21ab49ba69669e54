import type { Color, Position, Square } from '../../chess/index.ts';
import { blockAt, type Course, type NodeRef } from '../../model/index.ts';
import { nodeAt } from '../ask/node-at.ts';
import { emblematic } from './emblematic.ts';

/** The position that represents a course: on its first page, its card and the cover of its book. */
export interface CoverPosition {
  readonly position: Position;
  /** The side at the bottom. */
  readonly view: Color;
  /** A node with that position. */
  readonly ref: NodeRef;
  readonly lastMove?: { readonly from: Square; readonly to: Square } | undefined;
  /** The author's title for it. */
  readonly title?: string | undefined;
}

/** The position that the setting `cover` names, else the emblematic one of the first chapter that has one. */
export function coverPosition(course: Course): CoverPosition | undefined {
  const { cover } = course.settings;
  const ref = cover === undefined ? undefined : course.labels[cover]?.ref;
  const named = ref && shownAt(course, ref);
  if (named !== undefined) return { ...named, title: course.labels[cover ?? '']?.title };
  for (const chapter of course.chapters) {
    const shown = emblematic(chapter);
    if (shown === undefined) continue;
    const { position, block, node } = shown;
    const place = { chapter: chapter.file, block: block.key, node };
    // A diagram may show a position of some line: link to that, where readers can play on.
    const ref = course.graph[position.key]?.at[0];
    const lastMove = block.kind === 'diagram' ? block.lastMove : undefined;
    const known = ref && shownAt(course, ref);
    return { position, view: block.view, ref: ref ?? place, lastMove: lastMove ?? known?.lastMove };
  }
  return undefined;
}

function shownAt(course: Course, ref: NodeRef): CoverPosition | undefined {
  const node = nodeAt(course, ref);
  const block = blockAt(course, ref);
  if (node?.position === undefined || block === undefined) return undefined;
  return { position: node.position, view: block.view, ref, lastMove: node.move };
}
