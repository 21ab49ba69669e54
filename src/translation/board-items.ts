import type { PhrasingContent, RootContent } from 'mdast';
import type { Place } from '../diagnostics/index.ts';
import type { BlockSyntax, DirectiveNode, PlacedText, TreeSyntax } from '../read/index.ts';

/** Something that is true of the board in every language. */
export interface BoardItem {
  /** In a canonical spelling, such as `:claim[pinned f3]`. */
  readonly says: string;
  readonly place: Place;
}

type TextNode = RootContent | PhrasingContent;

/** What a block shows and says of the board, in the order of its text. */
export function boardItems(block: BlockSyntax): BoardItem[] {
  const { place } = block;
  const items: BoardItem[] = block.view ? [{ says: `view ${block.view}`, place }] : [];
  const add = (name: string, values: PlacedText | undefined | readonly PlacedText[]) => {
    for (const value of values === undefined ? [] : [values].flat()) {
      items.push({ says: `${name} \`${oneSpace(value.text)}\``, place: value.place });
    }
  };
  switch (block.kind) {
    case 'moves':
      add('from', block.from);
      add('fen', block.fen);
      if (block.learn) items.push({ says: `learn ${block.learn}`, place });
      items.push(...treeItems(block.moves));
      break;
    case 'diagram':
      addPosition(block, add, items);
      items.push(...itemsIn(block.caption, place.file));
      add('mark', block.marks);
      for (const arrow of block.arrows) add(arrow.meaning, arrow);
      add('claim', block.claims);
      break;
    case 'exercise':
      addPosition(block, add, items);
      items.push(...itemsIn(block.ask, place.file));
      for (const kind of ['answer', 'also', 'wrong'] as const) {
        for (const tree of block[kind]) {
          const [first] = treeItems(tree);
          if (first) items.push({ says: `${kind}:`, place: first.place });
          items.push(...treeItems(tree));
        }
      }
      break;
    case 'game':
      add('from', block.from);
      add('to', block.to);
      if (block.file !== place.file) items.push({ says: `file \`${block.file}\``, place });
      else if (block.moves) items.push(...treeItems(block.moves));
      break;
    case 'pattern':
      for (const { color, kind, square, place: at } of block.pieces) {
        items.push({ says: `${color} ${kind} ${square}`, place: at });
      }
      if (block.reversed) items.push({ says: 'reversed', place });
      for (const key of ['empty', 'at', 'advice', 'except'] as const) add(key, block[key]);
      add('claim', block.claims);
      items.push(...itemsIn(block.text, place.file));
  }
  return items;
}

function addPosition(
  { at, fen, after }: Extract<BlockSyntax, { readonly kind: 'diagram' | 'exercise' }>,
  add: (name: string, value: PlacedText | undefined) => void,
  items: BoardItem[],
): void {
  add('at', at);
  add('fen', fen);
  if (after) items.push(...treeItems(after));
}

/** The moves of a tree, with their signs, and what its comments say of the board. */
function treeItems({ nodes, file, comments }: TreeSyntax): BoardItem[] {
  const said = new Map<number, BoardItem[]>();
  for (const { node, content } of comments) {
    said.set(node, [...(said.get(node) ?? []), ...itemsIn(content, file)]);
  }
  return nodes.flatMap(({ index, written, glyphs, depth }) => {
    const of = sorted(said.get(index) ?? []);
    if (written === undefined) return of;
    const { san, place } = written;
    const signs = glyphs.map((glyph) => ` $${glyph}`).join('');
    const where = depth === 0 ? '' : ` in a variation of depth ${depth}`;
    return [{ says: `\`${plainSan(san)}\`${signs}${where}`, place }, ...of];
  });
}

/** Without what may be written or left out. */
function plainSan(san: string): string {
  return san.replace(/[+#!?]+$/, '').replaceAll('0', 'O');
}

/** Directives whose argument is words or the author's own business. */
const ofWords: ReadonlySet<string> = new Set(['end', 'option', 'judge']);

/** What texts say of the board; the last move that one mentions is what directives behind it speak of. */
export function itemsIn(nodes: readonly TextNode[], file: string): BoardItem[] {
  const items: BoardItem[] = [];
  let last = '';
  const walk = (inner: readonly TextNode[]): void => {
    for (const node of inner) {
      if (node.type === 'proseMoves') last = ` after ${node.value.replace(/\s+/g, '')}`;
      else if (node.type === 'courseDirective') {
        const says = directive(node);
        if (says !== undefined) items.push({ says: says + last, place: placeOf(node, file) });
      } else if (node.type === 'positionLink') {
        items.push({ says: `a link to \`pos:${node.label}\``, place: placeOf(node, file) });
      }
      if ('children' in node) walk(node.children);
    }
  };
  walk(nodes);
  return sorted(items);
}

function directive({ name, argument }: DirectiveNode): string | undefined {
  if (name === 'todo') return undefined;
  if (name === 'allow') return `:allow[${argument.split(' ')[0]} …]`;
  return ofWords.has(name) ? `:${name}[…]` : `:${name}[${argument}]`;
}

/** A sentence has its own order in each language. */
function sorted(items: readonly BoardItem[]): BoardItem[] {
  return [...items].sort((a, b) => (a.says < b.says ? -1 : a.says > b.says ? 1 : 0));
}

function placeOf({ position }: TextNode, file: string): Place {
  const { start, end } = position ?? {
    start: { line: 1, column: 1 },
    end: { line: 1, column: 1 },
  };
  const point = ({
    line,
    column,
    offset = 0,
  }: {
    line: number;
    column: number;
    offset?: number | undefined;
  }) => ({ line, column, offset });
  return { file, start: point(start), end: point(end) };
}

function oneSpace(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}
