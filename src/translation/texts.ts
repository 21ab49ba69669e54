import type { PhrasingContent, RootContent } from 'mdast';
import type { Place, Point } from '../diagnostics/index.ts';
import { languageTag } from './marks.ts';

/** Words of a chapter that a translator writes anew: a paragraph, a comment, a caption, a title. */
export interface Text {
  /** As they are compared: without typography, directives and the translator's mark. */
  readonly words: string;
  /** From the first word to the end. */
  readonly place: Place;
  /** With the directives before the first word. */
  readonly whole: Place;
  /** Whether it waits for its translator: not translated yet, or the original has changed since. */
  readonly mark?: 'open' | 'changed';
}

type TextNode = RootContent | PhrasingContent;

/** What a text says in words; none where it has nothing but moves and directives. */
export function textOf(nodes: readonly TextNode[], file: string, source: string): Text | undefined {
  const start = firstWord(nodes);
  const end = nodes.at(-1)?.position?.end;
  if (start === undefined || end === undefined) return undefined;
  const text = plainText(plainWords(nodes), { file, start, end: pointOf(end) }, source);
  const first = nodes[0]?.position?.start;
  return text && first && { ...text, whole: { ...text.place, start: pointOf(first) } };
}

/** The same of a text that has no Markdown. */
export function plainText(written: string, place: Place, source: string): Text | undefined {
  const { mark, words } = takeMark(written.trim(), source);
  const plain = normalised(words);
  if (!hasWords(plain)) return undefined;
  return { words: plain, place, whole: place, ...(mark && { mark }) };
}

function takeMark(
  text: string,
  source: string,
): { readonly words: string; readonly mark?: Text['mark'] } {
  const { open, changed } = languageTag(source);
  if (text.startsWith(open)) return { words: text.slice(open.length), mark: 'open' };
  if (text.startsWith(changed)) return { words: text.slice(changed.length), mark: 'changed' };
  return { words: text };
}

/** A word is more than the letters of a move: `Nf3` and `e4` are the same in every language. */
function hasWords(text: string): boolean {
  return /\p{L}{2}/u.test(text.replace(/[KQRBN]?[a-h]?[1-8]?x?[a-h][1-8](?:=[QRBN])?[+#]?/g, ''));
}

/** Typography is no change: quotation marks, dashes, spaces and what stands for three dots. */
function normalised(text: string): string {
  return text
    .normalize('NFC')
    .replace(/[‘’‚‛′]/g, "'")
    .replace(/[“”„‟«»″]/g, '"')
    .replace(/[‐‑‒–—―]/g, '-')
    .replaceAll('…', '...')
    .replace(/\s+/g, ' ')
    .trim();
}

/** The words of nodes, of links and emphasis too. */
function plainWords(nodes: readonly TextNode[]): string {
  return nodes.map(wordsOfNode).join('');
}

function wordsOfNode(node: TextNode): string {
  switch (node.type) {
    case 'courseDirective':
    case 'html':
    case 'courseBlock':
      return '';
    case 'break':
      return ' ';
    case 'image':
      return node.alt ?? '';
    case 'proseMoves':
    case 'inlineCode':
    case 'text':
      return node.value;
    default:
      return 'children' in node ? plainWords(node.children) : '';
  }
}

/** Where the first word stands, behind the directives before it. */
function firstWord(nodes: readonly TextNode[]): Point | undefined {
  for (const node of nodes) {
    if (node.type === 'courseDirective' || node.type === 'html' || node.type === 'break') continue;
    const start = node.position?.start;
    if (start === undefined) continue;
    if (node.type !== 'text') return pointOf(start);
    const spaces = /^\s*/.exec(node.value)?.[0].length ?? 0;
    // A text of spaces alone stands between two directives.
    if (spaces === node.value.length) continue;
    const { line, column, offset } = pointOf(start);
    return node.value.slice(0, spaces).includes('\n')
      ? pointOf(start)
      : { line, column: column + spaces, offset: offset + spaces };
  }
  return undefined;
}

export function pointOf({
  line,
  column,
  offset = 0,
}: {
  readonly line: number;
  readonly column: number;
  readonly offset?: number | undefined;
}): Point {
  return { line, column, offset };
}
