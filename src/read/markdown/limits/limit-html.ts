import type { Html, Root } from 'mdast';
import { visit } from 'unist-util-visit';
import { placeOf, type TextContext } from '../../text-context.ts';

/**
 * The most tags that HTML in a chapter may leave open at once: everything that reads the page recurses once a level.
 */
const mostOpen = 100;

/**
 * The most elements that unclosed formatting tags may create: a `<b>` left open at the end of its paragraph is
 * reopened in each one that follows (HTML, 13.2.4.3).
 */
const mostRepeated = 200_000;

/** Void elements, and those whose end tag the next of their kind stands for (HTML, 13.1.2). */
const closedByThemselves = new Set(
  (
    'area base br col embed hr img input link meta source track wbr ' +
    'li dt dd p rt rp option optgroup colgroup caption thead tbody tfoot tr td th'
  ).split(' '),
);

/** HTML, 13.2.4.2: the formatting elements, which are reopened. */
const formatting = new Set('a b big code em font i nobr s small strike strong tt u'.split(' '));

const tag = /<(\/?)([A-Za-z][^\s/>]*)/g;

/**
 * Empties the HTML of a chapter that leaves too many tags open, and reports where it does. A tag in a
 * comment counts as well: this is no parser of HTML.
 */
export function limitHtml(root: Root, context: Pick<TextContext, 'source' | 'report'>): void {
  // Most chapters have no HTML, and walking the whole tree costs as much as many a rule.
  if (!/<[/A-Za-z]/.test(context.source.text)) return;
  const open = new Map<string, number>();
  const nodes: Html[] = [];
  let all = 0;
  let formatted = 0;
  let repeated = 0;
  let excess: { node: Html; isDeep: boolean } | undefined;
  visit(root, (node) => {
    repeated += formatted;
    if (node.type === 'html') {
      nodes.push(node);
      for (const [, end, written = ''] of node.value.matchAll(tag)) {
        const name = written.toLowerCase();
        const count = open.get(name) ?? 0;
        if (closedByThemselves.has(name) || (end && count === 0)) continue;
        const change = end ? -1 : 1;
        open.set(name, count + change);
        all += change;
        if (formatting.has(name)) formatted += change;
      }
    }
    const last = nodes.at(-1);
    if (last && (all > mostOpen || repeated > mostRepeated)) {
      excess ??= { node: last, isDeep: all > mostOpen };
    }
  });
  if (!excess) return;
  context.report({
    place: placeOf(excess.node, context),
    message: excess.isDeep
      ? `HTML in this chapter leaves more than ${mostOpen} tags open.`
      : 'HTML in this chapter leaves tags open that are begun again in each paragraph.',
    hint: 'Close each tag, as in `<b>word</b>`.',
  });
  for (const node of nodes) node.value = '';
}
