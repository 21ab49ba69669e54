import { isSquare } from '../../chess/squares.ts';
import { dataOf } from '../../contract/attributes.ts';
import { drawBoardInPage } from '../../draw/page-board.ts';

/** Draws the boards that the page was too long to hold, each before the reader comes to it. */
export function drawInView(plates: readonly HTMLElement[]): void {
  const watch = new IntersectionObserver(
    (seen) => {
      for (const { target, isIntersecting } of seen) {
        if (!isIntersecting || !(target instanceof HTMLElement)) continue;
        watch.unobserve(target);
        draw(target);
      }
    },
    { rootMargin: '800px' },
  );
  const late = plates.filter((plate) => dataOf('plate', plate).board !== undefined);
  for (const plate of late) watch.observe(plate);
  // Paper shows them all.
  addEventListener('beforeprint', () => late.forEach(draw));
}

function draw(plate: HTMLElement): void {
  const { board, view, last = '' } = dataOf('plate', plate);
  const room = plate.querySelector('.plate-board');
  if (board === undefined || room === null || room.hasChildNodes()) return;
  const [from, to] = [last.slice(0, 2), last.slice(2, 4)];
  room.innerHTML = drawBoardInPage({
    placement: board,
    view: view === 'black' ? 'black' : 'white',
    coordinates: false,
    ...(isSquare(from) && isSquare(to) && { lastMove: { from, to } }),
  });
}
