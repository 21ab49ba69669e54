import type { FreeWords } from '../../contract/words.ts';
import type { NoteGroup } from './notes-in-order.ts';
import { drawingInWords } from './own-tools.ts';

/** Notes as a plain text to read and print: chapter, position, FEN, what was written and drawn. */
export function notesAsText(title: string, groups: readonly NoteGroup[], words: FreeWords): string {
  const parts = groups.flatMap((group) => [
    group.title,
    '='.repeat([...group.title].length),
    '',
    ...group.entries.flatMap((entry) => {
      const { key, label, bookmark, text = '' } = entry;
      const head = bookmark === true ? `${label} [${words.bookmark}]` : label;
      // Counters of moves were never kept; any program takes these.
      const lines = [head, `FEN: ${key} 0 1`, text.trim(), drawingInWords(entry, words)];
      return [...lines.filter((line) => line !== ''), ''];
    }),
  ]);
  return `${[title, '', ...parts].join('\n')}`;
}
