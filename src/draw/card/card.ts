import type { Color } from '../../chess/index.ts';
import { type Inks, palettes } from '../paint.ts';
import { boardKey } from '../png/board-key.ts';
import type { PngJob } from '../png/png.ts';
import { type CardWords, layOutCard } from './card-layout.ts';
import { type Collage, drawCollage, pastedSize } from './collage.ts';
import { showable } from './showable.ts';

export interface Card {
  readonly course: string;
  /** Title of the chapter; without it the card is the course's. */
  readonly chapter?: string | undefined;
  readonly author?: string | undefined;
  /** A FEN, or its first field. */
  readonly placement: string;
  readonly view: Color;
  /** BCP 47 language of the words; `en` unless said. */
  readonly language?: string | undefined;
  /** A course's own; those of `cloth` unless said. */
  readonly inks?: Inks | undefined;
}

/** Pixels of a card: the size that sites which show links ask for (common practice, no source). */
export const cardSize = { width: 1200, height: 630 } as const;
const { width } = cardSize;
const margin = 52;

/** Few see a card at all, so its file may be a twentieth larger where that takes a fifth of the time. */
const format = { ...cardSize, level: 6 };

/** Raised when the same card would be laid out in another way, so that caches are re-made. */
const layoutVersion = 3;

/**
 * A card for `makePngs`. To set its words takes as long as to draw a board, so it is laid out only
 * where the cache has no image of the same words and position.
 */
export function cardJob(card: Card, onLoss?: (message: string) => void): PngJob {
  const { placement, view } = card;
  const key = `card ${layoutVersion} ${JSON.stringify(card)} ${boardKey({ placement, view })}`;
  return { ...format, key, draw: () => composeCard(card, onLoss) };
}

/** A card as an SVG of 1200 by 630 that needs no font. */
export async function drawCard(card: Card, onLoss?: (message: string) => void): Promise<string> {
  return drawCollage(await composeCard(card, onLoss));
}

/**
 * A picture for links to a course or a chapter: the position and the titles. Long titles are set
 * smaller and over more lines, and at last cut with an ellipsis.
 *
 * The fonts hold Latin, Cyrillic, Greek and Vietnamese letters. Of other signs see `showable`: no
 * sign is ever drawn as an empty box. With no line left, the board stands alone in the middle.
 * `onLoss` is told of each line that was changed, and why.
 * @throws RangeError for a placement that cannot be drawn.
 */
async function composeCard(
  { course, chapter, author, placement, view, language = 'en', inks = palettes.cloth }: Card,
  onLoss: (message: string) => void = () => {},
): Promise<Collage> {
  const title = await showable(chapter || course, onLoss);
  const above = chapter ? await showable(course, onLoss) : '';
  const below = author ? await showable(author, onLoss) : '';
  // Where the title cannot be shown, the course's stands in for it.
  const words: CardWords = title ? { above, title, below } : { above: '', title: above, below };
  const alone = words.title === '' && words.below === '';
  const x = alone ? Math.floor((width - pastedSize) / 2) : margin - 6;
  return {
    ...cardSize,
    inks,
    board: { placement, view, x, y: margin },
    words: alone ? [] : await layOutCard(words, { language, inks }, wordsBox(x + pastedSize)),
  };
}

/** Where the words stand: right of the board, level with its squares. */
function wordsBox(boardEnd: number) {
  const x = boardEnd + 52;
  return { x, y: margin + 4, width: width - x - 56, height: pastedSize - 8 };
}
