import type { ElementContent, Root, RootContent } from 'hast';

const plainTags = /^(?:p|ul|ol|li|blockquote|pre|code|em|strong|del|br|hr)$/;

/**
 * Joins the parts of a document's text that no medium changes: without links, ids, boards, and moves that a script, a
 * style sheet or paper shows in its own way. They need not be resolved, and are written once for all.
 */
export function joinFixed(children: Root['children']): Root['children'] {
  const joined: RootContent[] = [];
  let run: ElementContent[] = [];
  for (const [index, node] of children.entries()) {
    const isLineEnd = node.type === 'text' && node.value === '\n';
    if (isFixed(node) || (isLineEnd && run.length > 0 && isFixed(children[index + 1]))) {
      run.push(node as ElementContent);
      if (run.length === 1) joined.push({ type: 'fixed', children: run });
    } else {
      run = [];
      joined.push(node);
    }
  }
  return joined;
}

function isFixed(node: RootContent | undefined): boolean {
  if (node?.type !== 'element' || node.data || !plainTags.test(node.tagName)) return false;
  for (const name in node.properties) if (name !== 'className' && name !== 'start') return false;
  return node.children.every((child) =>
    // Paper keeps castling on one line.
    child.type === 'text' ? !child.value.includes('O-O') : isFixed(child),
  );
}
