import type { Definition, Node } from 'mdast';
import type { Place } from '../diagnostics/index.ts';
import type { FileText } from './fence.ts';
import type { CourseProblem } from './types.ts';

/** What a chapter's text is read with. */
export interface TextContext {
  readonly source: FileText;
  /** The `[name]: address` definitions of the chapter by their identifier. */
  readonly definitions: ReadonlyMap<string, Definition>;
  readonly media: ReadonlySet<string>;
  /** The paths of all chapters; absent where they are not known, and links stay as they are. */
  readonly chapters: ReadonlySet<string> | undefined;
  readonly usedMedia: Set<string>;
  readonly report: (problem: Omit<CourseProblem, 'rule'>) => void;
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
