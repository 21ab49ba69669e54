import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runs } from '../../../tests/setup/runs.ts';
import { sentencesOf } from './sentences.ts';

const texts = (text: string, language: string) =>
  sentencesOf(text, language).map((sentence) => sentence.text);

test.each([
  ['en', ['After 7. Bg2 it is 7...Be7.', 'White to move;', 'so it goes.']],
  ['de', ['Z. B. steht der Springer auf d5, d. h. gut.', 'Nach 7. Lg2 zielt er auf d5.']],
  ['es', ['Tras 7. Ag2 mira a d5, p. ej. al peón.', '¿Juegan las negras?', 'No.']],
])('%s: %s', (language, sentences) => {
  expect(texts(sentences.join(' '), language)).toEqual(sentences);
});

test('a long text has the sentences of its parts, and one without an end has none', () => {
  const part = 'White to move. The knight on d5 is strong; it stays. ';
  const count = 30_000;
  expect(texts(part.repeat(count), 'en').length).toBe(3 * count);
  expect(texts('the knight on d5 '.repeat(count), 'en')).toEqual([]);
});

test('sentences stand where they are said to, one behind the other', () => {
  const words = fc.constantFrom(
    'White ',
    'd5. ',
    '7. Bg2 ',
    'z. B. ',
    '; ',
    '? ',
    '\n',
    'x'.repeat(900),
  );
  fc.assert(
    fc.property(fc.array(words, { maxLength: 60 }), (list) => {
      const text = list.join('');
      let last = 0;
      for (const { start, text: sentence } of sentencesOf(text, 'en')) {
        expect(text.slice(start, start + sentence.length)).toBe(sentence);
        expect(start).toBeGreaterThanOrEqual(last);
        last = start + sentence.length;
      }
    }),
    { numRuns: runs(100) },
  );
});

test('words without a point between them are not divided, whatever they are', () => {
  const signs = fc.constantFrom(
    ...['a', 'B', 'ß', 'Ñ', 'ё', '漢', '\u0301', ' ', ', ', '3', 'ⅷ', '\uE000', '\uE001'],
  );
  const words = fc.array(signs, { maxLength: 20 }).map((all) => all.join('').trim());
  fc.assert(
    fc.property(words, fc.constantFrom('', '.', '!', '?'), (text, end) => {
      fc.pre(text !== '');
      const segments = [
        ...new Intl.Segmenter('de', { granularity: 'sentence' }).segment(text + end),
      ];
      expect(segments).toHaveLength(1);
      expect(sentencesOf(text + end, 'de')).toEqual([{ start: 0, text: text + end }]);
    }),
    { numRuns: runs(500) },
  );
});
