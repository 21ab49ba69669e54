import { type BoardFile, drawBoard } from '../board.ts';
import { asInks } from '../paint.ts';
import { setText, textBox } from './set-text.ts';
import { showable } from './showable.ts';

export interface Caption {
  readonly text: string;
  /** BCP 47; `en` unless said. */
  readonly language?: string | undefined;
}

/**
 * A board as `drawBoard` makes it with a caption centred below, in outlines, so that no font is
 * needed to show it. The picture is as much higher as the caption needs.
 * Of signs that the fonts lack see `showable`; `onLoss` is told of them.
 * @throws as `drawBoard`.
 */
export async function drawCaptionedBoard(
  board: BoardFile,
  { text, language = 'en' }: Caption,
  onLoss: (message: string) => void = () => {},
): Promise<string> {
  const picture = drawBoard(board);
  const shown = await showable(text, onLoss);
  if (shown === '') return picture;
  const { size = 400, theme = 'light' } = board;
  const { ink, paper: sheet } = asInks(theme);
  const unit = size / 100;
  const line = textBox(
    {
      display: 'block',
      width: '100%',
      padding: `${unit}px ${unit * 7}px ${unit * 3}px`,
      fontSize: unit * 4,
      lineHeight: 1.3,
      textAlign: 'center',
      textWrap: 'balance',
      color: ink,
    },
    shown,
    { id: 'caption', lang: language },
  );
  const { svg, boxes } = await setText(line, size);
  const height = size + Math.ceil(boxes.get('caption')?.height ?? 0);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${size}" height="${height}" viewBox="0 0 ${size} ${height}">`,
    `<path fill="${sheet}" d="M0 0h${size}v${height}h-${size}z"/>`,
    picture,
    svg.replace('<svg ', `<svg y="${size}" `),
    '</svg>',
  ].join('\n');
}
