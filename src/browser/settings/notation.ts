import { dataOf } from '../../contract/attributes.ts';
import { splitUnbroken } from '../../contract/split-moves.ts';
import { make } from '../element.ts';

/** In the order of the letters of `DataAttributes.begin`. */
const kinds = ['king', 'queen', 'rook', 'bishop', 'knight'];
const english = 'KQRBN';

/** What no move for the reader stands in. */
const leftAlone = 'script, style, textarea, svg, pre, code, .settings';

const root = document.documentElement;
const begin = document.querySelector<HTMLElement>('script[data-settings]') ?? root;
const { written = 'letters', letters = english } = dataOf('begin', begin);
/** Those that the page and what scripts write into it have. */
const own = written === 'english' ? english : letters;

/** The notation that the author has chosen. */
export function writtenHere(): string {
  return written;
}

/** The text as the page had it, by its node, and as it was made of it. */
const changed = new WeakMap<Text, { readonly own: string; readonly shown: string }>();

/** While the page is parsed, its last text may still grow. */
let growing: Node | undefined;

/**
 * Shows all moves of the page in the notation that the reader has chosen, and goes on with what scripts write. They
 * know nothing of it: whatever they write has the author's letters.
 */
export function followNotation(): void {
  const page = new MutationObserver((changes) => {
    const nodes = changes.flatMap(({ type, target, addedNodes }) =>
      type === 'childList' ? [...addedNodes] : [target],
    );
    update(growing === undefined ? nodes : [growing, ...nodes]);
  });
  // Nothing of what was done here is to be heard of.
  const update = (nodes: readonly Node[]) => {
    growing = document.readyState === 'loading' ? lastOf(root) : undefined;
    for (const node of nodes) if (node.isConnected) rewrite(node);
    page.takeRecords();
  };
  page.observe(root, { childList: true, characterData: true, subtree: true });
  new MutationObserver(() => update([root])).observe(root, { attributeFilter: ['data-notation'] });
  addEventListener('DOMContentLoaded', () => update([root]));
  update([root]);
}

function lastOf(node: Node): Node {
  return node.lastChild === null ? node : lastOf(node.lastChild);
}

/** Each text first: they are replaced as one goes. */
function rewrite(node: Node): void {
  const texts = document.createTreeWalker(node, NodeFilter.SHOW_TEXT);
  const found = node instanceof Text ? [node] : [];
  while (texts.nextNode()) found.push(texts.currentNode as Text);
  for (const text of found) if (text !== growing) rewriteText(text);
}

function rewriteText(text: Text): void {
  const { parentElement: parent } = text;
  if (parent === null || parent.closest(leftAlone) !== null) return;
  const notation = root.dataset.notation ?? written;
  const wished = notation === 'english' ? english : letters;
  const kind = parent.matches('.figurine')
    ? kinds.findIndex((name) => parent.matches(`.${name}`))
    : -1;
  if (kind >= 0) {
    setText(text, wished[kind] ?? text.data);
    return;
  }
  const before = changed.get(text);
  const data = before?.shown === text.data ? before.own : text.data;
  const runs = splitUnbroken(data, own);
  const parts = runs.flat();
  if (!parts.some(({ isPiece }) => isPiece)) return;
  // Whoever reads a move in the page (`spots.ts`) reads it as it was.
  const move = parent.closest<HTMLElement>('.move');
  if (move !== null) move.dataset.own ??= move.textContent ?? '';
  const letter = (part: string) => wished[own.indexOf(part)] ?? part;
  if (notation === 'figurines') {
    const nodes = runs.flatMap((run) => {
      const shown = run.map(({ text, isPiece }) =>
        isPiece ? make('span', `figurine ${kinds[own.indexOf(text)]}`, letter(text)) : text,
      );
      // The style sheet keeps a move of a block on one line.
      const isWhole = move !== null || !run.some(({ isPiece }) => isPiece);
      return isWhole ? shown : [make('span', 'unbroken', ...shown)];
    });
    text.replaceWith(...nodes);
    return;
  }
  const shown = parts.map((part) => (part.isPiece ? letter(part.text) : part.text)).join('');
  changed.set(text, { own: data, shown });
  setText(text, shown);
}

function setText(text: Text, data: string): void {
  if (text.data !== data) text.data = data;
}
