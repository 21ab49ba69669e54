/** The words of a text as one string, with the way back to where each stands in the file. */
import type { PhrasingContent, RootContent } from 'mdast';
import type { Place, Point } from '../../diagnostics/index.ts';
import { placeOfNode } from '../../model/index.ts';
import type { DirectiveNode, PositionLinkNode, ProseMovesNode } from '../../read/index.ts';

type TextNode = RootContent | PhrasingContent;

/** Stands in `PlainText.text` for moves in inline code, which link to what they name. */
export const moveSign = '\uE000';
/** Stands for other code, for pictures, and for what else is no word. */
export const otherSign = '\uE001';

const whole = { from: 0, line: 0, lines: 0 };

const lineEnd = /\r\n|\r|\n/g;

/** A stretch of the text that a node of the tree is the source of. */
interface Stretch {
  readonly start: number;
  readonly end: number;
  readonly node: TextNode;
  /** Where it begins in the node's own text, and in which of its lines; it has no more than one. */
  readonly from: number;
  readonly line: number;
  /** How often the node's own text ends a line. */
  readonly lines: number;
}

export interface PlainText {
  readonly file: string;
  readonly text: string;
  readonly stretches: readonly Stretch[];
  /** The moves in inline code that it mentions. */
  readonly moves: readonly (Stretch & { readonly node: ProseMovesNode })[];
  readonly links: readonly LinkInText[];
  readonly directives: readonly DirectiveNode[];
  /** Inline code without a move number, such as `Nf3`. */
  readonly code: readonly string[];
}

export interface LinkInText {
  readonly start: number;
  readonly end: number;
  readonly node: PositionLinkNode | { readonly type: 'link'; readonly url: string };
}

/** Reads the nodes of a paragraph, a comment or a row of cells. A new line is a blank; only a cell ends with one. */
export function plainText(nodes: readonly TextNode[], file: string): PlainText {
  let text = '';
  const stretches: Stretch[] = [];
  const moves: (Stretch & { node: ProseMovesNode })[] = [];
  const links: LinkInText[] = [];
  const directives: DirectiveNode[] = [];
  const code: string[] = [];
  const add = (node: TextNode, words: string, { from, line, lines } = whole): Stretch => {
    const end = text.length + words.length;
    const stretch = { start: text.length, end, node, from, line, lines };
    text += words;
    stretches.push(stretch);
    return stretch;
  };
  const visit = (node: TextNode): void => {
    if (node.type === 'text') {
      if (!node.value.includes('\n') && !node.value.includes('\r')) {
        add(node, node.value);
        return;
      }
      const ends = [...node.value.matchAll(lineEnd)];
      const lines = ends.length;
      let from = 0;
      for (const [line, { 0: end, index }] of ends.entries()) {
        add(node, `${node.value.slice(from, index)} `, { from, line, lines });
        from = index + end.length;
      }
      add(node, node.value.slice(from), { from, line: lines, lines });
    } else if (node.type === 'proseMoves') moves.push({ ...add(node, moveSign), node });
    else if (node.type === 'courseDirective') directives.push(node);
    else if (node.type === 'break') add(node, ' ');
    else if (node.type === 'inlineCode') {
      code.push(node.value);
      add(node, otherSign);
    } else if ('children' in node) {
      const start = text.length;
      for (const child of node.children) visit(child);
      if (node.type === 'tableCell') add(node, ' |\n');
      if (node.type === 'positionLink' || node.type === 'link') {
        links.push({ start, end: text.length, node });
      }
    } else add(node, otherSign);
  };
  for (const node of nodes) visit(node);
  return { file, text, stretches, moves, links, directives, code };
}

/** Where a stretch of the text stands in the file. */
export function placeIn({ stretches, file }: PlainText, start: number, end: number): Place {
  const last = stretches[firstWhere(stretches, (stretch) => end <= stretch.end)];
  // A point between two stretches belongs to the one that it ends.
  const first =
    start === end ? last : stretches[firstWhere(stretches, (stretch) => start < stretch.end)];
  const from = first && pointIn(first, start, file);
  const to = last && pointIn(last, end, file);
  const whole = stretches[0] && placeOfNode(stretches[0].node, file);
  const none: Point = { line: 1, column: 1, offset: 0 };
  return { file, start: from ?? whole?.start ?? none, end: to ?? from ?? whole?.end ?? none };
}

/** The index of the first that a test is true of; it is true of all behind it too. */
function firstWhere<T>(list: readonly T[], isTrue: (one: T) => boolean): number {
  let [low, high] = [0, list.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    const one = list[middle];
    if (one !== undefined && isTrue(one)) high = middle;
    else low = middle + 1;
  }
  return low;
}

/**
 * A point within a node. Where the node's text is shorter than its source, by the blanks that lines begin with,
 * these are taken to be the same for all its lines; where they are not, it is the node's start.
 */
function pointIn(stretch: Stretch, at: number, file: string): Point {
  const { start, end, node, from, line, lines } = stretch;
  const place = placeOfNode(node, file);
  if (node.type !== 'text') return at >= end ? place.end : place.start;
  const offset = from + at - start;
  if (line === lines && lines > 0) {
    const rest = node.value.length - offset;
    return {
      line: place.end.line,
      column: place.end.column - rest,
      offset: place.end.offset - rest,
    };
  }
  const blanks = place.end.offset - place.start.offset - node.value.length;
  const each = lines === 0 ? 0 : blanks / lines;
  if (line > 0 && !Number.isInteger(each)) return place.start;
  return {
    line: place.start.line + line,
    column: line === 0 ? place.start.column + offset : offset - from + each + 1,
    offset: place.start.offset + offset + line * each,
  };
}
