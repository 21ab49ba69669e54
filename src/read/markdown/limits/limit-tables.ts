import type { Root } from 'mdast';
import { visit } from 'unist-util-visit';
import { placeOf, type TextContext } from '../../text-context.ts';

/**
 * The most cells in the tables of a chapter: a hundred tables of a hundred rows and ten columns. Short rows are
 * filled up when shown, so a table has columns times rows cells.
 */
const mostCells = 100_000;

/** Empties the tables beyond the limit and reports the first. */
export function limitTables(root: Root, context: Pick<TextContext, 'source' | 'report'>): void {
  if (!context.source.text.includes('|')) return;
  let cells = 0;
  let reported = false;
  visit(root, 'table', (table) => {
    const columns = table.children[0]?.children.length ?? 0;
    cells += columns * table.children.length;
    if (cells <= mostCells) return;
    if (!reported) {
      context.report({
        place: placeOf(table, context),
        message: `The tables of this chapter have more than ${mostCells.toLocaleString('en')} cells; this one is not read.`,
        hint: `It has ${columns} columns and ${table.children.length} rows. Make it smaller, or divide the chapter into several.`,
      });
    }
    reported = true;
    table.children = [];
  });
}
