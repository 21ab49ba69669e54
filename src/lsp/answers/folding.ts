import { type FoldingRange, FoldingRangeKind } from 'vscode-languageserver-protocol';
import { type MoveNode, treesOf } from '../../model/index.ts';
import type { Asked } from '../asked.ts';

/** What can be folded: the front matter, sections, blocks, and in those long comments and variations. */
export function folding({ chapter: read, text, open }: Asked): FoldingRange[] {
  const chapter = read();
  if (!chapter) return [];
  const lineOf = (offset: number) => open.document.positionAt(offset).line;
  const found = new Map<string, FoldingRange>();
  const add = (start: number, end: number, kind?: FoldingRangeKind) => {
    const [startLine, endLine] = [lineOf(start), lineOf(end)];
    if (endLine <= startLine) return;
    found.set(`${startLine} ${endLine}`, { startLine, endLine, ...(kind && { kind }) });
  };
  const front = /^---[ \t]*\r?\n[\s\S]*?\r?\n---[ \t]*(?=\r?\n|$)/.exec(text);
  if (front) add(0, front[0].length, FoldingRangeKind.Region);
  const headings = chapter.body.children.flatMap((node) =>
    node.type === 'heading' ? [{ depth: node.depth, at: node.position?.start.offset ?? 0 }] : [],
  );
  for (const [index, { depth, at }] of headings.entries()) {
    const next = headings.slice(index + 1).find((other) => other.depth <= depth);
    add(at, text.slice(0, next?.at ?? text.length).trimEnd().length);
  }
  for (const block of chapter.blocks) {
    add(block.place.start.offset, block.place.end.offset);
    for (const node of treesOf(block).flat()) foldBehind(node, chapter.file, add);
  }
  return [...found.values()].sort((a, b) => a.startLine - b.startLine || b.endLine - a.endLine);
}

function foldBehind(
  { after }: MoveNode,
  file: string,
  add: (start: number, end: number, kind?: FoldingRangeKind) => void,
): void {
  for (const { type, place } of after) {
    if (place.file !== file) continue;
    add(
      place.start.offset,
      place.end.offset,
      type === 'comment' ? FoldingRangeKind.Comment : undefined,
    );
  }
}
