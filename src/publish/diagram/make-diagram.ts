import { type Color, describePosition, sideToMove } from '../../chess/index.ts';
import {
  type BoardArrow,
  drawBoard,
  drawCaptionedBoard,
  inksOf,
  makePng,
  type Theme,
} from '../../draw/index.ts';
import { colourIn, type Look } from '../../look/index.ts';
import { stringsFor } from '../../strings/index.ts';
import type { FoundPosition } from './find-position.ts';

export interface DiagramRequest extends FoundPosition {
  readonly view: Color;
  readonly coordinates: boolean;
  readonly marks: readonly string[];
  readonly arrows: readonly BoardArrow[];
  /** Stands below the board with the side to move; without it the corner tells the side alone. */
  readonly caption?: string | undefined;
  /** BCP 47 language of caption and alternative text. */
  readonly language: string;
  readonly theme: Theme;
  /** That of the course that it is drawn in. */
  readonly look?: Look | undefined;
  /** Width in CSS pixels. */
  readonly size: number;
}

export interface Diagram {
  readonly svg: string;
  /** What the picture shows, for readers who do not see it. */
  readonly alt: string;
  /** What could not be drawn of the caption. */
  readonly losses: readonly string[];
}

/** One position as a picture that stands alone. @throws RangeError for a size out of bounds. */
export async function makeDiagram(request: DiagramRequest): Promise<Diagram> {
  const { position, caption, language, look, ...picture } = request;
  const theme = look
    ? inksOf(picture.theme, (name, mode) => colourIn(look, name, mode))
    : picture.theme;
  const turn = sideToMove(position);
  const strings = stringsFor(language);
  const desc = describePosition(position, strings.position);
  const alt = caption ? `${sentence(caption)} ${desc}` : desc;
  // Within a page an SVG is named by its title; `desc` only adds to it (SVG-AAM).
  const title = caption ? caption : strings.toMove[turn];
  const board = { ...picture, theme, placement: position.fen, turn, title, desc };
  if (!caption) return { svg: drawBoard(board), alt, losses: [] };
  const losses: string[] = [];
  const text = `${sentence(caption)} ${strings.toMove[turn]}.`;
  const svg = await drawCaptionedBoard(board, { text, language }, (loss) => losses.push(loss));
  return { svg, alt, losses };
}

/** The picture's pixels; `scale` of them to a CSS pixel. */
export function rasterize({ svg }: Diagram, size: number, scale: number): Uint8Array {
  return makePng(svg, { width: size, scale });
}

function sentence(text: string): string {
  return /[.!?…]$/.test(text) ? text : `${text}.`;
}
