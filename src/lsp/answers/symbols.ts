import { toString as plainText } from 'mdast-util-to-string';
import { type DocumentSymbol, SymbolKind } from 'vscode-languageserver-protocol';
import { type Block, type Chapter, namesWritten } from '../../model/index.ts';
import type { Asked } from '../asked.ts';

/** A part of a chapter in its outline, in offsets. */
interface OutlineEntry {
  readonly name: string;
  readonly detail?: string;
  readonly kind: SymbolKind;
  readonly start: number;
  end: number;
  /** The end of its first line, which is shown when it is chosen. */
  readonly head: number;
  readonly level: number;
  readonly parts: OutlineEntry[];
}

/** The outline of a chapter: its headings, the blocks below them and the names in those. */
export function symbols({ chapter: read, text, open, session }: Asked): DocumentSymbol[] {
  const chapter = read();
  if (!chapter) return [];
  const toSymbol = ({
    name,
    detail,
    kind,
    start,
    end,
    head,
    parts,
  }: OutlineEntry): DocumentSymbol => ({
    name,
    ...(detail === undefined ? {} : { detail }),
    kind,
    range: session.places.toRange(open, start, end),
    selectionRange: session.places.toRange(open, start, Math.min(head, end)),
    children: parts.map(toSymbol),
  });
  return outline(chapter, text).map(toSymbol);
}

function outline(chapter: Chapter, text: string): OutlineEntry[] {
  const top: OutlineEntry[] = [];
  const open: OutlineEntry[] = [];
  const close = (level: number, at: number) => {
    while ((open.at(-1)?.level ?? -1) >= level) {
      const part = open.pop();
      if (part) part.end = Math.max(part.end, at);
    }
  };
  for (const node of chapter.body.children) {
    const start = node.position?.start.offset ?? 0;
    const end = node.position?.end.offset ?? start;
    const below = () => open.at(-1)?.parts ?? top;
    if (node.type === 'heading') {
      close(node.depth, text.slice(0, start).trimEnd().length);
      const name = plainText(node).trim() || 'A heading without words';
      const part: OutlineEntry = {
        name,
        kind: SymbolKind.String,
        start,
        end,
        head: end,
        level: node.depth,
        parts: [],
      };
      below().push(part);
      open.push(part);
    } else if (node.type === 'courseBlock') {
      const block = chapter.blocks[node.block];
      if (block) below().push(partOf(block, chapter, text));
    }
  }
  close(0, text.trimEnd().length);
  return top;
}

function partOf(block: Block, chapter: Chapter, text: string): OutlineEntry {
  const [start, end] = [block.place.start.offset, block.place.end.offset];
  const names = namesWritten(chapter).filter(
    ({ isGiven, place, name }) =>
      isGiven && name.trim() !== '' && place.start.offset >= start && place.end.offset <= end,
  );
  const head = start + Math.max(0, text.slice(start, end).search(/[\r\n]|$/));
  return {
    name: block.kind,
    detail: detailOf(block),
    kind: SymbolKind.Array,
    start,
    end,
    head,
    level: 7,
    parts: names.map(({ name, place }) => ({
      name,
      kind: SymbolKind.Key,
      start: place.start.offset,
      end: place.end.offset,
      head: place.end.offset,
      level: 8,
      parts: [],
    })),
  };
}

/** What tells a block from others: its first moves, its question, its title. */
function detailOf(block: Block): string {
  switch (block.kind) {
    case 'exercise':
      return short(plainText({ type: 'paragraph', children: [...block.ask] }));
    case 'diagram':
      return (
        block.at?.name ?? short(plainText({ type: 'paragraph', children: [...block.caption] }))
      );
    case 'pattern':
      return short(block.title);
    case 'moves':
    case 'game': {
      const first = block.nodes.slice(1, 7).flatMap(({ written }) => written?.san ?? []);
      return short(
        [...(block.kind === 'moves' && block.from ? [`${block.from.name}:`] : []), ...first].join(
          ' ',
        ),
      );
    }
  }
}

function short(text: string): string {
  const line = text.replace(/\s+/g, ' ').trim();
  return line.length > 60 ? `${line.slice(0, 59)}…` : line;
}
