import type { Root } from 'mdast';
import remarkParse from 'remark-parse';
import { type Processor, unified } from 'unified';
import { limitLines } from './limits/index.ts';
import { fromMarkdownExtensions, micromarkExtensions } from './markdown.ts';

/**
 * The unified plugin that teaches remark-parse the Markdown of courses: tables, footnotes, front
 * matter and text directives. What the directives and fenced blocks mean is read from the tree
 * by `readChapter`. Text that would take too long to parse becomes a node `excess`.
 */
export function remarkCourse(this: Processor): void {
  const data = this.data() as {
    micromarkExtensions?: unknown[];
    fromMarkdownExtensions?: unknown[];
  };
  data.micromarkExtensions = [...(data.micromarkExtensions ?? []), ...micromarkExtensions];
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
export const courseProcessor = unified().use(remarkParse).use(remarkCourse).freeze();
