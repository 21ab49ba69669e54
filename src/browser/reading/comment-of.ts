import type { Spot } from '../spots.ts';

/**
 * What the author says of the move that led to a position, as it stands behind the move: words and signs up to the
 * next move or variation. Nothing where he says nothing.
 */
export function commentOf(spot: Spot): DocumentFragment | undefined {
  const { element, move } = spot.home ?? spot;
  if (move === undefined) return undefined;
  const comment = document.createDocumentFragment();
  for (let node = element.nextSibling; node !== null; node = node.nextSibling) {
    if (node instanceof Element && node.matches('.move, .variation')) break;
    comment.append(node.cloneNode(true));
  }
  for (const copy of comment.querySelectorAll('[id]')) copy.removeAttribute('id');
  const { firstChild, lastChild } = comment;
  if (firstChild?.nodeType === Node.TEXT_NODE) {
    firstChild.textContent = (firstChild.textContent ?? '').trimStart();
  }
  // The brackets of a variation are none of its move's words.
  if (lastChild?.nodeType === Node.TEXT_NODE) {
    lastChild.textContent = (lastChild.textContent ?? '').replace(/\s*[()]\s*$/, '');
  }
  return comment.textContent?.trim() ? comment : undefined;
}

/** The same as it is spoken, signs by their meaning. */
export function saidOf(spot: Spot): string {
  const comment = commentOf(spot);
  for (const sign of comment?.querySelectorAll('[role="img"]') ?? []) {
    sign.textContent = `${sign.getAttribute('aria-label') ?? ''}. `;
  }
  return (comment?.textContent ?? '').trim();
}
