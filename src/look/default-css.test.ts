import { expect, test } from 'vitest';
import { defaultCss } from './default-css.ts';

test('look.css is what the table of defaults says', async () => {
  await expect(defaultCss()).toMatchFileSnapshot('../site/styles/look.css');
});
