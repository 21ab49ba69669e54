import type { Heading, PhrasingContent, RootContent } from 'mdast';
import { toString as headingText } from 'mdast-util-to-string';
import { createLocator, type Place, topOf } from '../diagnostics/index.ts';
import type { BlockSyntax, ChapterSyntax, TreeSyntax } from '../read/index.ts';
import { type BoardItem, boardItems, itemsIn } from './board-items.ts';
import { frontTexts } from './front-texts.ts';
import { plainText, pointOf, type Text, textOf } from './texts.ts';

/**
 * A piece of a chapter that a translation has as well, with the prose behind it: the front matter, a heading, a block.
 */
export interface TranslationUnit {
  readonly kind: 'front' | 'heading' | BlockSyntax['kind'];
  readonly place: Place;
  /** What it says of the board, in the order of its text. */
  readonly board: readonly BoardItem[];
  /** Its own words. */
  readonly texts: readonly Text[];
  readonly prose: {
    readonly board: readonly BoardItem[];
    readonly texts: readonly Text[];
  };
}

type TextNode = RootContent | PhrasingContent;

interface OpenUnit extends Omit<TranslationUnit, 'prose'> {
  readonly prose: { readonly board: BoardItem[]; readonly texts: Text[] };
}

/**
 * The units of a chapter in order; the first is its front matter.
 * @param text that it was read from.
 * @param source language of the original, which the marks of a translator name.
 */
export function unitsOf(
  chapter: ChapterSyntax,
  text: string,
  source: string,
): readonly TranslationUnit[] {
  const { file, body, blocks } = chapter;
  const units: OpenUnit[] = [];
  const begin = (unit: Omit<TranslationUnit, 'prose'>) => {
    units.push({ ...unit, prose: { board: [], texts: [] } });
  };
  const top = topOf(file);
  begin({
    kind: 'front',
    place: top,
    board: settingsIn(chapter).map((says) => ({ says, place: top })),
    texts: frontTexts(file, text, source),
  });
  const walk = (nodes: readonly TextNode[]): void => {
    for (const node of nodes) {
      if (node.type === 'courseBlock') {
        const block = blocks[node.block];
        if (block) {
          const { kind, place } = block;
          begin({
            kind,
            place,
            board: boardItems(block),
            texts: textsOfBlock(block, { file, text, source }),
          });
        }
      } else if (node.type === 'heading') {
        const place = placeOfHeading(node, file);
        begin({
          kind: 'heading',
          place,
          board: [{ says: `level ${node.depth}`, place }, ...itemsIn(node.children, file)],
          texts: textsIn(node.children, file, source),
        });
      } else if (node.type === 'paragraph' || node.type === 'tableCell') {
        const now = units.at(-1)?.prose;
        now?.board.push(...itemsIn(node.children, file));
        now?.texts.push(...textsIn(node.children, file, source));
      } else if ('children' in node) walk(node.children);
    }
  };
  walk(body.children);
  return units;
}

/** What the front matter says that is no words. */
function settingsIn({ learn, page }: ChapterSyntax): string[] {
  return [
    ...(learn ? [`\`learn: ${learn}\``] : []),
    ...(page
      ? [
          `\`in: ${page.in}\``,
          ...(page.letter ? ['`letter`'] : []),
          ...(page.book ? ['`book`'] : []),
        ]
      : []),
  ];
}

export function headingsOf({ body }: ChapterSyntax): string[] {
  const found: string[] = [];
  const walk = (nodes: readonly TextNode[]): void => {
    for (const node of nodes) {
      if (node.type === 'heading') found.push(headingText(node));
      else if ('children' in node) walk(node.children);
    }
  };
  walk(body.children);
  return found;
}

function placeOfHeading({ position }: Heading, file: string): Place {
  const start = pointOf(position?.start ?? { line: 1, column: 1 });
  return { file, start, end: position ? pointOf(position.end) : start };
}

/** A text, and the titles of the names that it gives. */
function textsIn(nodes: readonly TextNode[], file: string, source: string): Text[] {
  const own = textOf(nodes, file, source);
  return [...(own ? [own] : []), ...titlesIn(nodes, file, source)];
}

function titlesIn(nodes: readonly TextNode[], file: string, source: string): Text[] {
  return nodes.flatMap((node): Text[] => {
    if (node.type === 'courseDirective') {
      const { title, titleRange } = node;
      if (title === undefined || titleRange === undefined) return [];
      const text = plainText(title, { file, ...titleRange }, source);
      return text ? [text] : [];
    }
    return 'children' in node ? titlesIn(node.children, file, source) : [];
  });
}

interface Around {
  readonly file: string;
  readonly text: string;
  readonly source: string;
}

function textsOfBlock(block: BlockSyntax, around: Around): Text[] {
  const { file, source } = around;
  const ofTrees = (trees: readonly (TreeSyntax | undefined)[]) =>
    trees.flatMap((tree) =>
      tree?.file === file
        ? tree.comments.flatMap(({ content }) => textsIn(content, file, source))
        : [],
    );
  switch (block.kind) {
    case 'moves':
      return ofTrees([block.moves]);
    case 'game':
      return ofTrees([block.moves]);
    case 'diagram':
      return [
        ...textsIn(block.caption, file, source),
        ...namedText('alt', block.alt, block, around),
        ...ofTrees([block.after]),
      ];
    case 'exercise':
      return [
        ...textsIn(block.ask, file, source),
        ...ofTrees([block.after, ...block.answer, ...block.also, ...block.wrong]),
        ...block.hints.flatMap((hint) => textsIn(hint, file, source)),
      ];
    case 'pattern':
      return [
        ...namedText('title', block.title, block, around),
        ...textsIn(block.text, file, source),
      ];
  }
}

/** A text of a block's body that is kept without its place. */
function namedText(
  name: string,
  value: string | undefined,
  { place }: BlockSyntax,
  { file, text, source }: Around,
): Text[] {
  if (value === undefined) return [];
  const begins = new RegExp(
    `^[ \\t>]*${name}:[ \\t]*(?:[|>][-+0-9]*[ \\t]*\\n[ \\t>]*)?["']?`,
    'm',
  );
  const from = text.indexOf('\n', place.start.offset) + 1;
  const found = begins.exec(text.slice(from));
  const at = found ? from + found.index + found[0].length : place.start.offset;
  const point = createLocator(text)(at);
  const made = plainText(value, { file, start: point, end: point }, source);
  return made ? [made] : [];
}
