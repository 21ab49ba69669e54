import type { Root } from 'mdast';
import type { TextContext } from '../../text-context.ts';
import { limitHtml } from './limit-html.ts';
import { limitNesting } from './limit-nesting.ts';
import { limitTables } from './limit-tables.ts';

export type { ExcessNode } from './excess.ts';
export { limitLines } from './limit-lines.ts';
export { limitNesting } from './limit-nesting.ts';
export { limitSigns, mayExceedSigns, signLimitFromMarkdown } from './limit-signs.ts';

/** Removes from a chapter's tree, and reports, what would make later walks slow or overflow the stack. */
export function limitTree(root: Root, context: Pick<TextContext, 'source' | 'report'>): void {
  limitNesting(root, context);
  limitHtml(root, context);
  limitTables(root, context);
}
