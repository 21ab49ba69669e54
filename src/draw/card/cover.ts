import { drawBoard } from '../board.ts';
import { palettes } from '../paint.ts';
import { boardKey } from '../png/board-key.ts';
import type { PngJob } from '../png/png.ts';
import type { Card } from './card.ts';
import { layOutCard } from './card-layout.ts';
import { showable } from './showable.ts';

/** CSS pixels of a cover; drawn in double size it is 1600 by 2400 (common practice, no source). */
const coverSize = { width: 800, height: 1200 } as const;
const { width, height } = coverSize;
const margin = 72;
const boardSide = width - 2 * margin + 24;

/** Raised when the same cover would be laid out in another way, so that caches are re-made. */
const layoutVersion = 2;

/** A cover for `makePngs`; it is laid out only where the cache has no image of it. */
export function coverJob(cover: Omit<Card, 'chapter'>): PngJob {
  const { placement, view } = cover;
  const key = `cover ${layoutVersion} ${JSON.stringify(cover)} ${boardKey({ placement, view })}`;
  return { key, draw: () => drawCover(cover), width, scale: 2 };
}

/**
 * The cover of a book: the titles above, a position below, as an SVG that needs no font. Of signs
 * that the fonts lack see `showable`.
 * @throws RangeError for a placement that cannot be drawn.
 */
export async function drawCover({
  course,
  author,
  placement,
  view,
  language = 'en',
  inks = palettes.cloth,
}: Omit<Card, 'chapter'>): Promise<string> {
  const ignore = () => {};
  const title = await showable(course, ignore);
  const below = author ? await showable(author, ignore) : '';
  const boardY = height - margin - boardSide + 12;
  const box = { x: margin, y: margin, width: width - 2 * margin, height: boardY - margin - 24 };
  const words =
    title || below ? await layOutCard({ above: '', title, below }, { language, inks }, box) : [];
  const placed = words.map(({ svg, x, y }) => svg.replace('<svg ', `<svg x="${x}" y="${y}" `));
  const board = drawBoard({ placement, view, size: boardSide, theme: inks }).replace(
    '<svg ',
    `<svg x="${margin - 12}" y="${boardY}" `,
  );
  const sheet = `<rect width="${width}" height="${height}" fill="${inks.paper}"/>`;
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}">${sheet}${board}${placed.join('')}</svg>`;
}
