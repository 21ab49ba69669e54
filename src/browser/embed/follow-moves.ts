import { EmbeddedBoard, lineShown } from './embedded-board.ts';

/**
 * Has moves of a text lead to the board beside it, and says which of them it shows. A move is a button with its line,
 * `data-line-moves`, `data-line-sans` and how many of those lead to it, `data-line-at`, as `readLine` takes them.
 */
export function followMoves(): void {
  const follow = (event: Event) => {
    const { target } = event;
    const move = target instanceof Element ? target.closest<HTMLElement>('[data-line-at]') : null;
    const board = move?.closest('.course-line-text')?.querySelector('course-line');
    if (!move || !(board instanceof EmbeddedBoard)) return;
    const { lineMoves = '', lineSans = '', lineAt = '0' } = move.dataset;
    event.preventDefault();
    board.follow({ moves: lineMoves, sans: lineSans, at: lineAt });
  };
  addEventListener('click', follow);
  addEventListener('keydown', (event) => {
    if (event.key === 'Enter' || event.key === ' ') follow(event);
  });
  addEventListener(lineShown, (event) => {
    const board = event.target;
    if (!(board instanceof Element)) return;
    const shown = firstOf(board.getAttribute('moves') ?? '', (event as CustomEvent<number>).detail);
    const text = board.closest('.course-line-text');
    for (const move of text?.querySelectorAll<HTMLElement>('[data-line-at]') ?? []) {
      const own = firstOf(move.dataset.lineMoves ?? '', Number(move.dataset.lineAt));
      if (own === shown) move.setAttribute('aria-current', 'true');
      else move.removeAttribute('aria-current');
    }
  });
}

function firstOf(moves: string, count: number): string {
  return moves.split(' ', count).join(' ');
}
