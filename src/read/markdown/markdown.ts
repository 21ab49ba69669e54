/** The Markdown of courses: CommonMark, tables, footnotes, front matter and text directives. */
import type { Nodes, PhrasingContent } from 'mdast';
import { directiveFromMarkdown } from 'mdast-util-directive';
import { fromMarkdown } from 'mdast-util-from-markdown';
import { frontmatterFromMarkdown } from 'mdast-util-frontmatter';
import { gfmFootnoteFromMarkdown } from 'mdast-util-gfm-footnote';
import { gfmTableFromMarkdown } from 'mdast-util-gfm-table';
import { directive } from 'micromark-extension-directive';
import { frontmatter } from 'micromark-extension-frontmatter';
import { gfmFootnote } from 'micromark-extension-gfm-footnote';
import { gfmTable } from 'micromark-extension-gfm-table';
import type { Point } from '../../diagnostics/index.ts';
import { limitSigns, mayExceedSigns, signLimitFromMarkdown } from './limits/index.ts';

declare module 'mdast-util-directive' {
  interface TextDirectiveData {
    /** The source text of a directive, where it is known without the file. */
    written?: string;
  }
}

export const signLimit = limitSigns();

// Of the generic directives only those inside a text: `::` and `:::` stay ordinary text.
const textDirective = { text: directive().text ?? {} };

const front = frontmatter(['yaml']);
const footnote = gfmFootnote();

export const tables = gfmTable();

/** All extensions but tables and limits. */
export const plainExtensions = [front, footnote, textDirective];

export const fromMarkdownExtensions = [
  frontmatterFromMarkdown(['yaml']),
  gfmTableFromMarkdown(),
  gfmFootnoteFromMarkdown(),
  directiveFromMarkdown(),
  signLimitFromMarkdown,
];

/** The constructs to disable in comments, which are inline text only; HTML shows as text. */
const inlineOnly = {
  disable: {
    null: [
      'blockQuote',
      'codeFenced',
      'codeIndented',
      'definition',
      'headingAtx',
      'htmlFlow',
      'htmlText',
      'list',
      'setextUnderline',
      'thematicBreak',
    ],
  },
};

/** A comment or a caption, and the map from its offsets to places in the file. */
interface InlineText {
  readonly text: string;
  readonly pointAt: (offset: number) => Point;
}

/** Reads comments or captions as inline Markdown; the nodes carry file places. */
export function readInlines(texts: readonly InlineText[]): PhrasingContent[][] {
  const read = texts.map(readPlain);
  const marked = texts.filter(({ text }, at) => read[at] === undefined && !startsWithMark(text));
  const parsed = new Map(parseInlines(marked));
  return read.map((plain, at) => {
    const text = texts[at];
    if (plain || !text) return plain ?? [];
    return parsed.get(text) ?? parseInlines([text])[0]?.[1] ?? [];
  });
}

/** The parser drops a byte order mark only at the start of its input. */
function startsWithMark(text: string): boolean {
  return text.startsWith('\uFEFF');
}

/** Most comments are plain words and need no parser. */
function readPlain({ text, pointAt }: InlineText): PhrasingContent[] | undefined {
  if (text.trim() === '') return [];
  // A list marker at the start means nothing here, since blocks are switched off.
  if (!/^[^\\`*_[\]:<>&]*$/.test(text)) return undefined;
  const value = text.trim().replace(/[ \t]*(\r\n?|\n)[ \t]*/g, '\n');
  return [{ type: 'text', value, position: { start: pointAt(0), end: pointAt(text.length) } }];
}

const paragraphEnd = '\n\n';

/**
 * Parses the texts as paragraphs of one document, because setting up the parser takes longer than parsing a comment.
 * The paragraphs cannot affect each other, since there are no definitions among them.
 */
function parseInlines(texts: readonly InlineText[]): [InlineText, PhrasingContent[]][] {
  if (texts.length === 0) return [];
  const whole = texts.map(({ text }) => text).join(paragraphEnd);
  const { children: blocks } = fromMarkdown(whole, {
    extensions: [textDirective, inlineOnly, ...(mayExceedSigns(whole) ? [signLimit] : [])],
    mdastExtensions: [directiveFromMarkdown(), signLimitFromMarkdown],
  });
  let next = 0;
  let start = 0;
  return texts.map((inline) => {
    const content: PhrasingContent[] = [];
    const end = start + inline.text.length;
    for (let block = blocks[next]; block && offsetOf(block) < end; block = blocks[++next]) {
      if (block.type !== 'paragraph') continue;
      if (content.length > 0) content.push({ type: 'text', value: '\n' });
      for (const child of block.children) content.push(child);
    }
    shift(content, inline, start);
    start = end + paragraphEnd.length;
    return [inline, content];
  });
}

function offsetOf({ position }: Nodes): number {
  return position?.start.offset ?? 0;
}

/**
 * Shifts the nodes of a text, which started at an offset of the parsed document, to their places in the file. Not
 * recursive, since no limit applies yet.
 */
function shift(
  nodes: readonly PhrasingContent[],
  { text, pointAt }: InlineText,
  from: number,
): void {
  const open = [...nodes];
  for (let node = open.pop(); node; node = open.pop()) {
    if (node.position) {
      const start = (node.position.start.offset ?? 0) - from;
      const end = (node.position.end.offset ?? 0) - from;
      // The file may have more characters here: the `> ` of a quote, an escape of YAML.
      if (node.type === 'textDirective') node.data = { written: text.slice(start, end) };
      node.position = { start: pointAt(start), end: pointAt(end) };
    }
    if ('children' in node) for (const child of node.children) open.push(child);
  }
}
