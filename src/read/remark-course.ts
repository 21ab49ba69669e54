import type { Root } from 'mdast';
import remarkParse from 'remark-parse';
import { type Processor, unified } from 'unified';
import { limitLines } from './limits/index.ts';
import { fromMarkdownExtensions, micromarkExtensions, plainExtensions } from './markdown.ts';

/**
 * The unified plugin that teaches remark-parse the Markdown of courses: tables, footnotes, front
 * matter and text directives. What the directives and fenced blocks mean is read from the tree
 * by `readChapter`. Text that would take too long to parse becomes a node `excess`.
 */
export function remarkCourse(this: Processor): void {
  extendParser.call(this, micromarkExtensions);
}

function extendParser(this: Processor, syntax: readonly unknown[]): void {
  const data = this.data() as {
    micromarkExtensions?: unknown[];
    fromMarkdownExtensions?: unknown[];
  };
  data.micromarkExtensions = [...(data.micromarkExtensions ?? []), ...syntax];
  data.fromMarkdownExtensions = [...(data.fromMarkdownExtensions ?? []), ...fromMarkdownExtensions];
  const parse = this.parser;
  if (parse === undefined) return;
  this.parser = (document, file) => {
    const { text, excess } = limitLines(document);
    const tree = parse(text, file) as Root;
    tree.children.push(...excess);
    return tree;
  };
}

/** The reader's own pipeline; Astro never parses a chapter. */
const withTables = unified().use(remarkParse).use(remarkCourse).freeze();
const withoutTables = unified().use(remarkParse).use(extendParser, plainExtensions).freeze();

/** A row of hyphens that parts the head of a table from its body has one of these (GFM 0.29, 4.10). */
const tableSign = /\||:-|-:/;

/**
 * Parses a chapter or a file of news. To ask at each line whether a table begins takes a fourth of the time of
 * parsing, so it is asked only where one can.
 */
export function parseMarkdown(text: string): Root {
  return (tableSign.test(text) ? withTables : withoutTables).parse(text);
}
