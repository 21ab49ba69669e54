import type { Element, ElementContent, RootContent } from 'hast';
import { toHtml } from 'hast-util-to-html';
import { convert, type FormatCallback } from 'html-to-text';
import { element, text } from '../../render/index.ts';
import type { LetterFrame } from './letter-frame.ts';

/** The class of lists that are variations, set for the selector below. */
const lines = 'lines';

/** Columns of a line (RFC 5322, 2.1.1 has 78 as the most; quoting takes some). */
const wordwrap = 72;

/**
 * A letter as plain text. Boards are letters already (`textBoard`). Links on an author's own words keep
 * their addresses; those of moves and positions in our words do not, since every move would have one.
 */
export function makePlainText(
  { head, foot }: LetterFrame,
  legend: string | undefined,
  body: readonly RootContent[],
): string {
  const tree = [
    ...head,
    ...(legend === undefined ? [] : [element('p', {}, [legend])]),
    ...fitForText(body),
    element('p', {}, ['-- ']),
    ...foot,
  ];
  const words = convert(toHtml({ type: 'root', children: tree }), {
    wordwrap,
    formatters: { heading, note },
    selectors: [
      ...['h1', 'h2', 'h3', 'h4', 'h5', 'h6'].map((selector) => ({ selector, format: 'heading' })),
      { selector: 'a', options: { linkBrackets: ['<', '>'], hideLinkHrefIfSameAsText: true } },
      { selector: 'ul', options: { itemPrefix: '- ' } },
      { selector: `ul.${lines}`, format: 'unorderedList', options: { itemPrefix: '   ' } },
      { selector: 'sup', format: 'note' },
      {
        selector: 'table',
        format: 'dataTable',
        options: { uppercaseHeaderCells: false, colSpacing: 2, maxColumnWidth: 32 },
      },
    ],
  });
  // Code keeps the line ends of the author's file; a message has those of its sender (RFC 5322, 2.3).
  const message = words.replaceAll('\u00a0', ' ').replace(/\r\n?/g, '\n');
  return `${message.trim()}\n`;
}

/** What plain text can have of a text. */
export function fitForText(nodes: readonly RootContent[]): ElementContent[] {
  return nodes.flatMap((node) => (node.type === 'doctype' ? [] : forText(node)));
}

function forText(node: ElementContent): ElementContent[] {
  if (node.type !== 'element') return node.type === 'text' ? [node] : [];
  if ('dataFootnoteBackref' in node.properties) return [];
  if (node.tagName === 'img') {
    const { alt } = node.properties;
    return alt ? [text(`[${alt}]`)] : [];
  }
  const children = node.children.flatMap(forText);
  const { link = 'words', role } = node.data ?? {};
  if (role === 'variations') return [element('ul', { className: [lines] }, children)];
  return link === 'move' || link === 'position'
    ? children
    : [{ ...node, children } satisfies Element];
}

/** A heading with a line below it: capitals would spoil the names of moves. */
const heading: FormatCallback = (node, walk, builder) => {
  const sign = node.name === 'h1' ? '=' : '-';
  builder.openBlock({ leadingLineBreaks: node.name === 'h1' ? 1 : 3 });
  walk(node.children, builder);
  builder.closeBlock({
    trailingLineBreaks: 2,
    blockTransform: (block) => {
      const width = block.split('\n').reduce((most, line) => Math.max(most, line.length), 0);
      return `${block}\n${sign.repeat(width)}`;
    },
  });
};

const note: FormatCallback = (node, walk, builder) => {
  builder.addInline('[', { noWordTransform: true });
  walk(node.children, builder);
  builder.addInline(']', { noWordTransform: true });
};
