export type Navigation = 'back' | 'on' | 'first' | 'last' | 'variation-before' | 'variation-after';

/** Keys that scroll the page act on the moves only while one of them, or the board, has the focus. */
const anywhere: Readonly<Record<string, Navigation>> = { ArrowLeft: 'back', ArrowRight: 'on' };
const amongMoves: Readonly<Record<string, Navigation>> = {
  ...anywhere,
  Home: 'first',
  End: 'last',
  ArrowUp: 'variation-before',
  ArrowDown: 'variation-after',
};

/** Listens for steps; `onStep` returns whether there was one to take: if not, the key keeps its use. */
export function listenForKeys(onStep: (step: Navigation) => boolean): void {
  addEventListener('keydown', (event) => {
    if (
      event.defaultPrevented ||
      event.altKey ||
      event.ctrlKey ||
      event.metaKey ||
      event.shiftKey
    ) {
      return;
    }
    const target = event.target instanceof Element ? event.target : document.body;
    if (target.closest('input, textarea, select, [contenteditable], .table, pre') !== null) return;
    const step = (target.closest('.move, course-board') ? amongMoves : anywhere)[event.key];
    if (step !== undefined && onStep(step)) event.preventDefault();
  });
}
