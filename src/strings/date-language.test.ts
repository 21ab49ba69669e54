import { expect, test } from 'vitest';
import { dayInWords } from './date-language.ts';

test('a day in words, in the language of the course', () => {
  expect(dayInWords('2026-11-25', 'en')).toBe('25 November 2026');
  expect(dayInWords('2026-11-25', 'de')).toBe('25. November 2026');
});

// A preview shows news whose front matter cannot be read: its pages broke.
test('of a day that could not be read there is nothing to say', () => {
  expect(dayInWords('', 'en')).toBe('');
});
