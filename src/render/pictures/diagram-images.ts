import { sideToMove } from '../../chess/index.ts';
import type { Chapter, DiagramBlock } from '../../model/index.ts';

/** The names of a chapter's diagram pictures, by the blocks' keys: `main-line-after-exchange`. */
export function diagramNames(chapter: Chapter): ReadonlyMap<string, string> {
  const names = new Map<string, string>();
  const taken = new Set<string>();
  let count = 0;
  for (const block of chapter.blocks) {
    if (block.kind !== 'diagram' || block.position === undefined) continue;
    count += 1;
    const byLabel = block.at && `${chapter.id}-${block.at.name}`;
    const name = byLabel !== undefined && !taken.has(byLabel) ? byLabel : `${chapter.id}-${count}`;
    taken.add(name);
    names.set(block.key, name);
  }
  return names;
}

/** The path of a picture in the site; `scale` 2 is for dense screens. */
export function imagePath(name: string, scale: 1 | 2): string {
  return `images/${encodeURIComponent(name)}${scale === 2 ? '@2x' : ''}.png`;
}

/** What a diagram shows, for drawing. */
export function pictureOf(block: DiagramBlock) {
  const { position, view, marks, arrows, lastMove } = block;
  if (position === undefined) return undefined;
  const turn = sideToMove(position);
  return { placement: position.fen, view, marks, arrows, lastMove, turn };
}

/** The path of the picture that other sites show beside a link to a chapter, or to the course. */
export function cardPath(chapter?: Chapter): string {
  // Cannot collide with diagrams: their names have a hyphen and no folder.
  return chapter === undefined
    ? 'images/course.png'
    : `images/cards/${encodeURIComponent(chapter.id)}.png`;
}
