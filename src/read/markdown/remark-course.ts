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
  /** Whether a table may begin somewhere. */
  readonly tables: boolean;
  /** Whether there may be too many signs somewhere. */
  readonly limit: boolean;
}

/** The limit of signs stands last, so that they are counted before anything else reads them. */
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

/** A row of hyphens that parts the head of a table from its body has one of these (GFM 0.29, 4.10). */
const tableSign = /\||:-|-:/;

/**
 * Parses a chapter or a file of news. To ask at each line whether a table begins takes a fourth of the time of
 * parsing, and to count signs a tenth, so both is done only where it can matter.
 */
export function parseMarkdown(text: string): Root {
  const mayHaveTables = tableSign.test(text);
  if (mayExceedSigns(text)) return (mayHaveTables ? withAll : withLimit).parse(text);
  return (mayHaveTables ? withTables : plain).parse(text);
}
