import { expect, test } from 'vitest';
import { boardCss } from './board-css.ts';

test('board.css is what the table of paints says', async () => {
  await expect(boardCss()).toMatchFileSnapshot('./board.css');
});
