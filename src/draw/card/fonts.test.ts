import { expect, test } from 'vitest';
import { cardFonts } from './fonts.ts';
import { setText, textBox } from './set-text.ts';

/** Signs for which the fonts of Latin alone are read. */
const plain = Array.from({ length: 0x2100 }, (_, code) => String.fromCharCode(code)).filter(
  (sign) => cardFonts(sign).length === 3,
);

test.each([{}, { fontWeight: 600 }, { fontStyle: 'italic' }])(
  'the part for Latin has each sign for which it is read alone (%o)',
  async (style) => {
    expect(plain.length).toBeGreaterThan(190);
    const { missing } = await setText(textBox({ fontSize: 10, ...style }, plain.join(' ')), 4000);
    expect([...missing]).toEqual([]);
  },
);

test('a text in other letters gets all parts', async () => {
  expect(cardFonts('Łódź, Слон, ἵππος')).toHaveLength(18);
  const { missing } = await setText(textBox({ fontSize: 10 }, 'Łódź Слон Việt'), 400);
  expect([...missing]).toEqual([]);
});

test('a text is set alike whichever parts are read', async () => {
  const box = (text: string) =>
    textBox({ flexDirection: 'column', alignItems: 'flex-start' }, [
      textBox({ fontSize: 40 }, 'Größe „Nf3“', { id: 'line' }),
      textBox({ fontSize: 10 }, text),
    ]);
  const [latin, all] = await Promise.all(['x', 'Я'].map((text) => setText(box(text), 400)));
  expect(latin?.boxes.get('line')).toEqual(all?.boxes.get('line'));
});
