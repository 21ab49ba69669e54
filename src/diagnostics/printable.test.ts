import { expect, test } from 'vitest';
import { printable, printableLines, writeJson } from './printable.ts';

// C0 and C1 controls: ECMA-48, table 1; line separators: Unicode 16, section 5.8; embeddings,
// overrides and isolates: UAX #9, table 4.
const codes = [
  ...Array.from({ length: 0x20 }, (_, code) => code),
  ...Array.from({ length: 0x21 }, (_, code) => 0x7f + code),
  ...[0x2028, 0x2029, 0x202a, 0x202b, 0x202c, 0x202d, 0x202e, 0x2066, 0x2067, 0x2068, 0x2069],
];
const all = codes.map((code) => String.fromCharCode(code)).join('');
const acts = new RegExp(`[${codes.map((code) => `\\u{${code.toString(16)}}`).join('')}]`, 'u');

test('no sign that acts is left, and the length stays', () => {
  expect(printable(all)).not.toMatch(acts);
  expect(printable(all)).toHaveLength(all.length);
  expect(printable('a\u001b[31mb\r\nc\u007f\td\u009be\u202ef\u2028g')).toBe('a␛[31mb␍␊c␡ d�e�f␤g');
});

test('text of several lines keeps its line ends, and no other', () => {
  expect(printableLines(all).replaceAll('\n', '')).not.toMatch(acts);
  expect(printableLines('a\r\nb\nc\rd\u2028e\u001bc')).toBe('a\nb\nc␍d␤e␛c');
});

test('words of any script stay as they are', () => {
  const words = 'é ß ж ש \u200f\u200e ل \u200d 漢 ♞ 👩\u200d🏫 \u00a0\u00ad…';
  expect(printable(words)).toBe(words);
});

test('JSON has them as escapes, and is read back as it was', () => {
  const value = { [all]: [all, 'x'], n: 1 };
  const text = writeJson(value);
  expect(text.replaceAll('\n', '')).not.toMatch(acts);
  expect(JSON.parse(text)).toEqual(value);
  expect(writeJson({ a: 1 })).toBe('{\n  "a": 1\n}\n');
});
