import type { Definition, Node } from 'mdast';
import type { Place } from '../diagnostics/index.ts';
import { findNameFault, type MediaFault } from '../media/index.ts';
import type { FileText } from './blocks/fence.ts';
import type { PiecesOfFile } from './moves/in-san.ts';
import type { CourseProblem } from './types.ts';

/** What a chapter's text is read with. */
export interface TextContext {
  readonly source: FileText;
  /** The `[name]: address` definitions of the chapter by their identifier. */
  readonly definitions: ReadonlyMap<string, Definition>;
  readonly media: ReadonlySet<string>;
  /** Why some of these files are not published, by path. */
  readonly unfit: ReadonlyMap<string, MediaFault>;
  /** The paths of all chapters; where unknown, links stay as they are. */
  readonly chapters: ReadonlySet<string> | undefined;
  readonly usedMedia: Set<string>;
  /** The letters that its moves are written in; absent for those of SAN. */
  readonly pieces?: PiecesOfFile | undefined;
  /** Numbers the directives and moves of the file's texts, in the order in which they are read. */
  readonly nextId: () => number;
  /** The rule defaults to `chapter-unreadable`. */
  readonly report: (problem: Omit<CourseProblem, 'rule'> & Partial<CourseProblem>) => void;
}

export function placeOf(node: Node, { source }: Pick<TextContext, 'source'>): Place {
  const start = source.pointAt(node.position?.start.offset ?? 0);
  const end = source.pointAt(node.position?.end.offset ?? start.offset);
  return { file: source.file, start, end };
}

/** The position of a node, for the node that takes its place. */
export function positionOf({ position }: Node): Pick<Node, 'position'> {
  return position ? { position } : {};
}

/** Marks a file of `media/` as used, or reports why it cannot be published. */
export function takeMedia(file: string, node: Node, context: TextContext): boolean {
  return takeMediaAt(file, placeOf(node, context), context);
}

export function takeMediaAt(file: string, place: Place, context: TextContext): boolean {
  const fault = findNameFault(file) ?? context.unfit.get(file);
  if (fault) context.report({ rule: 'media-unfit', place, ...fault });
  else context.usedMedia.add(file);
  return fault === undefined;
}

export function createCounter(): () => number {
  let next = 0;
  return () => next++;
}
