import { createHash } from 'node:crypto';
import type { Chapter } from '../model/index.ts';
import type { RenderContext, SharedContext } from './context.ts';

/**
 * Makes one chapter's part of a page or a file: plain data that can be kept as JSON. It sees the chapter and asks the
 * rest of the course by `context.ask`; see `SharedContext.course`.
 */
export interface PartMaker<Part> {
  /** Its key among what is kept of a chapter. */
  readonly kind: string;
  /** What it depends on besides the chapter, the course's settings and the answers it got. */
  readonly inputs: string;
  readonly make: (context: RenderContext) => Part;
}

/** Gives the parts of a course's chapters, fresh or kept. */
export interface Parts {
  of<Part>(maker: PartMaker<Part>, chapter: Chapter): Part;
}

/** Makes parts when they are asked for. */
export function freshParts(shared: SharedContext): Parts {
  return { of: (maker, chapter) => maker.make({ ...shared, chapter }) };
}

/**
 * A hash of a part.
 * @param part as JSON.
 */
export function printPart(part: string): string {
  return createHash('sha256').update(part).digest('base64url').slice(0, 22);
}
