import { createHash } from 'node:crypto';
import { drawBoard } from '../board.ts';
import type { Inks } from '../paint.ts';
import type { BoardPicture } from '../picture.ts';
import { specimens } from './tiled-board.ts';

let looks: string | undefined;

/**
 * Names what a board shows and how boards are drawn: another picture has another key. To draw it for that would
 * take longer than to keep it.
 */
export function boardKey(picture: BoardPicture, inks?: Inks): string {
  const { view = 'white', coordinates = true, marks = [], arrows = [], lastMove, turn } = picture;
  const [placement = ''] = picture.placement.trim().split(/\s+/, 1);
  const move = lastMove && [lastMove.from, lastMove.to];
  looks ??= hashLooks();
  const shown = [looks, placement, view, coordinates, marks, arrows, move, turn];
  return JSON.stringify(inks === undefined ? shown : [...shown, inks]);
}

/** Of all that a board can show, as this program draws it. */
function hashLooks(): string {
  const hash = createHash('sha256');
  const shown = { placement: specimens, marks: ['d2'], lastMove: { from: 'a4', to: 'b8' } };
  for (const [view, turn] of [
    ['white', 'black'],
    ['black', 'black'],
    ['white', 'white'],
    ['black', undefined],
  ] as const) {
    const arrows = (['plan', 'threat', 'guard'] as const).map((meaning, index) => ({
      meaning,
      from: `a${1 + index}`,
      to: `${'egh'.charAt(index)}${3 + index}`,
    }));
    const coordinates = turn !== undefined;
    for (const theme of ['two-tone', 'cloth'] as const) {
      hash.update(drawBoard({ ...shown, view, turn, arrows, coordinates, theme }));
    }
  }
  return hash.digest('base64url').slice(0, 22);
}
