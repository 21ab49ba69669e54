import { describe, expect, test } from 'vitest';
import { glyphMeaning, largestNag } from '../movetext/glyphs.ts';
import * as de from './de/index.ts';
import * as en from './en/index.ts';
import * as es from './es/index.ts';

/** Every text of a catalogue by its path; texts that are composed get the names of their gaps. */
function texts(catalogue: object): Map<string, string> {
  const found = new Map<string, string>();
  const walk = (value: unknown, path: string): void => {
    if (typeof value === 'string') found.set(path, value);
    else if (typeof value === 'function') {
      const gaps = Array.from({ length: value.length }, (_, index) => `{gap${index}}`);
      found.set(path, String(value(...gaps)));
    } else if (typeof value === 'object' && value !== null) {
      for (const [key, part] of Object.entries(value)) walk(part, `${path}/${key}`);
    }
  };
  walk(catalogue, '');
  found.delete('/glyph');
  return found;
}

const gapsOf = (text: string | undefined) => (text?.match(/\{\w+\}/g) ?? []).sort();
const english = texts(en);

for (const [language, catalogue] of Object.entries({ de, es })) {
  describe(language, () => {
    const own = texts(catalogue);

    test('has every text of the English catalogue, and no other', () => {
      expect([...own.keys()].sort()).toEqual([...english.keys()].sort());
    });

    test('loses no gap, and leaves no text empty that English fills', () => {
      const gapless = [...own].filter(
        ([path, text]) =>
          gapsOf(text).join() !== gapsOf(english.get(path)).join() ||
          (text === '') !== (english.get(path) === ''),
      );
      expect(gapless).toEqual([]);
    });

    test('leaves no sentence in English', () => {
      const same = [...own].filter(([path, text]) => {
        const words = text.replace(/\{\w+\}/g, '').match(/\p{L}{3,}/gu) ?? [];
        return words.length > 1 && text === english.get(path);
      });
      expect(same).toEqual([]);
    });

    test('says what every glyph means that means something, each in its own words', () => {
      const meanings = new Set<string>();
      for (let nag = 0; nag <= largestNag; nag++) {
        const meaning = catalogue.glyph(nag);
        expect(meaning === undefined, `$${nag}`).toBe(glyphMeaning(nag) === undefined);
        if (meaning === undefined) continue;
        expect(meaning, `$${nag}`).not.toBe(glyphMeaning(nag));
        expect(meanings, `$${nag}`).not.toContain(meaning);
        meanings.add(meaning);
      }
    });
  });
}
