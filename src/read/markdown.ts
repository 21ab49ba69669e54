/** The Markdown of courses: CommonMark, tables, footnotes, front matter and text directives. */
import type { PhrasingContent } from 'mdast';
import { directiveFromMarkdown } from 'mdast-util-directive';
import { fromMarkdown } from 'mdast-util-from-markdown';
import { frontmatterFromMarkdown } from 'mdast-util-frontmatter';
import { gfmFootnoteFromMarkdown } from 'mdast-util-gfm-footnote';
import { gfmTableFromMarkdown } from 'mdast-util-gfm-table';
import { directive } from 'micromark-extension-directive';
import { frontmatter } from 'micromark-extension-frontmatter';
import { gfmFootnote } from 'micromark-extension-gfm-footnote';
import { gfmTable } from 'micromark-extension-gfm-table';
import type { Point } from '../diagnostics/index.ts';
import { limitSigns, signLimitFromMarkdown } from './limits/index.ts';

declare module 'mdast-util-directive' {
  interface TextDirectiveData {
    /** The directive as it was written, where that is known without the file. */
    written?: string;
  }
}

const signLimit = limitSigns();

// Of the generic directives only those inside a text: `::` and `:::` stay ordinary text.
const textDirective = { text: directive().text ?? {} };

const front = frontmatter(['yaml']);
const footnote = gfmFootnote();

export const micromarkExtensions = [front, gfmTable(), footnote, textDirective, signLimit];

/** All but tables. */
export const plainExtensions = [front, footnote, textDirective, signLimit];

export const fromMarkdownExtensions = [
  frontmatterFromMarkdown(['yaml']),
  gfmTableFromMarkdown(),
  gfmFootnoteFromMarkdown(),
  directiveFromMarkdown(),
  signLimitFromMarkdown,
];

/** Everything that would make a comment more than a run of inline text; HTML shows as text. */
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

/**
 * Reads a comment or a caption as inline Markdown. `pointAt` leads from an offset in `text` to
 * its place in the file; the nodes carry file places.
 */
export function readInline(text: string, pointAt: (offset: number) => Point): PhrasingContent[] {
  if (text.trim() === '') return [];
  // Most comments are plain words: they need no parser. A list marker at the start is no sign of
  // Markdown here, since blocks are switched off.
  if (/^[^\\`*_[\]:<>&]*$/.test(text)) {
    const value = text.trim().replace(/[ \t]*(\r\n?|\n)[ \t]*/g, '\n');
    return [{ type: 'text', value, position: { start: pointAt(0), end: pointAt(text.length) } }];
  }
  const root = fromMarkdown(text, {
    extensions: [textDirective, inlineOnly, signLimit],
    mdastExtensions: [directiveFromMarkdown(), signLimitFromMarkdown],
  });
  const content: PhrasingContent[] = [];
  for (const block of root.children) {
    if (block.type !== 'paragraph') continue;
    if (content.length > 0) content.push({ type: 'text', value: '\n' });
    for (const child of block.children) content.push(child);
  }
  shift(content, text, pointAt);
  return content;
}

/** Gives the nodes their places in the file; without recursion, since nothing has limited them yet. */
function shift(
  nodes: readonly PhrasingContent[],
  text: string,
  pointAt: (offset: number) => Point,
): void {
  const open = [...nodes];
  for (let node = open.pop(); node; node = open.pop()) {
    if (node.position) {
      const start = node.position.start.offset ?? 0;
      const end = node.position.end.offset ?? 0;
      // Between these points the file may hold more: the `> ` of a quote, an escape of YAML.
      if (node.type === 'textDirective') node.data = { written: text.slice(start, end) };
      node.position = { start: pointAt(start), end: pointAt(end) };
    }
    if ('children' in node) for (const child of node.children) open.push(child);
  }
}
