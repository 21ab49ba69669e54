import type { CourseTable } from '../../contract/course-table.ts';
import type { TreeWords } from '../../contract/words.ts';
import { moveText, type PathMove } from '../../lookup/index.ts';
import { element } from '../element.ts';

/**
 * A move of the tree: a button that shows its position on the board, called by the move with its number; and
 * the word for what the move is to the course, seen where the type alone would not tell.
 */
export function treeMove(
  table: CourseTable,
  step: PathMove,
  words: TreeWords,
  bare: boolean,
): HTMLElement[] {
  const { move } = step;
  // A course for both sides has no side whose moves would be advice.
  const kind = table.side === 'both' && move.kind === 'option' ? 'reply' : move.kind;
  const button = element(
    'button',
    { type: 'button', class: `course-move ${kind}`, 'data-position': String(move.to) },
    moveText(step, words.letters, bare),
  );
  if (bare) button.setAttribute('aria-label', moveText(step, words.letters));
  const word = words.kinds[kind];
  if (word === '') return [button];
  const seen = kind === 'advice' ? 'unseen' : 'move-kind';
  return [button, element('span', { class: seen }, ` ${word}`)];
}

export function positionOfMove(button: Element): number | undefined {
  const position = button instanceof HTMLElement ? button.dataset.position : undefined;
  return position === undefined ? undefined : Number(position);
}
