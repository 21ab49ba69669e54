import { createHash } from 'node:crypto';
import type { Chapter } from '../model/index.ts';
import type { RenderContext, SharedContext } from './context.ts';

/**
 * Makes what one chapter gives to a page or a file: plain data that can be kept as JSON. It sees the chapter and
 * asks for what it needs of the rest by `context.ask`; see `SharedContext.course`.
 */
export interface PartMaker<Part> {
  /** Names it among what is kept of a chapter. */
  readonly kind: string;
  /** All that it depends on beside the chapter, the course's settings and what it asks. */
  readonly inputs: string;
  readonly make: (context: RenderContext) => Part;
}

/** The parts of the chapters of a course, wherever they come from. */
export interface Parts {
  of<Part>(maker: PartMaker<Part>, chapter: Chapter): Part;
}

/** Parts that are made when they are asked for. */
export function freshParts(shared: SharedContext): Parts {
  return { of: (maker, chapter) => maker.make({ ...shared, chapter }) };
}

/** A short text that is equal where a part is. @param part as JSON. */
export function printPart(part: string): string {
  return createHash('sha256').update(part).digest('base64url').slice(0, 22);
}
