import type { Root } from 'mdast';
import remarkParse from 'remark-parse';
import { type Processor, unified } from 'unified';
import { limitLines, mayExceedSigns } from './limits/index.ts';
import { fromMarkdownExtensions, plainExtensions, signLimit, tables } from './markdown.ts';

/**
 * The unified plugin that teaches remark-parse the Markdown of courses: tables, footnotes, front
 * matter and text directives. What the directives and fenced blocks mean is read from the tree
 * by `readChapter`. Text that would take too long to parse becomes a node `excess`.
 */
export function remarkCourse(this: Processor): void {
  extendParser.call(this, syntaxWith({ tables: true, limit: true }));
}

interface Needed {
  /** Whether the text may contain a table. */
  readonly tables: boolean;
  /** Whether the text may exceed the limits of signs. */
  readonly limit: boolean;
}

/** The limit of signs goes last, so that it counts before anything else reads. */
function syntaxWith(needed: Needed) {
  return [
    ...plainExtensions,
    ...(needed.tables ? [tables] : []),
    ...(needed.limit ? [signLimit] : []),
  ];
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

/** The reader's own pipelines; Astro never parses a chapter. */
const parserWith = (needed: Needed) =>
  unified().use(remarkParse).use(extendParser, syntaxWith(needed)).freeze();
const withAll = parserWith({ tables: true, limit: true });
const withTables = parserWith({ tables: true, limit: false });
const withLimit = parserWith({ tables: false, limit: true });
const plain = parserWith({ tables: false, limit: false });

/** The delimiter row of a table contains one of these (GFM 0.29, 4.10). */
const tableSign = /\||:-|-:/;

/**
 * Parses a chapter or a file of news. Looking for tables at each line takes a fourth of the parsing time, and
 * counting signs a tenth, so it does both only where they can matter.
 */
export function parseMarkdown(text: string): Root {
  const mayHaveTables = tableSign.test(text);
  if (mayExceedSigns(text)) return (mayHaveTables ? withAll : withLimit).parse(text);
  return (mayHaveTables ? withTables : plain).parse(text);
}
