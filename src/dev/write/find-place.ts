import { createHash } from 'node:crypto';
import { chapterIds } from '../../addresses/index.ts';
import type { PlaceOnPage } from '../../contract/index.ts';
import { type Block, type Chapter, documentsOf, type MoveNode } from '../../model/index.ts';
import type { LoadedCourse } from '../../pipeline/index.ts';
import { DeskRefusal } from '../desk-door.ts';

export interface CourseOnPages {
  readonly loaded: LoadedCourse;
  /** `DeskState.version` */
  readonly version: number;
}

/** A place of a page in the chapter that it was made of. */
export interface PlaceInCourse {
  readonly course: LoadedCourse['course'];
  readonly chapter: Chapter;
  /** The text that the chapter, and the page, were made of. */
  readonly text: string;
  readonly block: Block;
  /** The node that is meant; of an exercise the position that it asks about. */
  readonly node: MoveNode | undefined;
}

/** @throws DeskRefusal for a place that the course on the pages does not have. */
export function findPlace({ loaded, version }: CourseOnPages, asked: PlaceOnPage): PlaceInCourse {
  if (asked.version !== version) {
    throw new DeskRefusal('The course has changed since this page was made. Load it anew.', 409);
  }
  const chapter = documentsOf(loaded.course).find(({ id }) => id === asked.chapter);
  const text = chapter && loaded.textOf(chapter.file);
  if (chapter === undefined || text === undefined) {
    throw new DeskRefusal('The course has no such chapter.', 404);
  }
  const ids = chapterIds(chapter);
  for (const block of chapter.blocks) {
    const index =
      block.kind === 'moves' || block.kind === 'game'
        ? block.nodes.findIndex((node) => ids.ofNode(block, node.index) === asked.at)
        : ids.ofNode(block, 0) === asked.at
          ? 0
          : -1;
    if (index < 0) continue;
    const { course } = loaded;
    return { course, chapter, text, block, node: block.nodes[index] };
  }
  throw new DeskRefusal('This position stands in no block of the chapter that can be written to.');
}

/** A short name for a text: another text has another. */
export function printText(text: string): string {
  return createHash('sha256').update(text).digest('base64url');
}
