import { expect, test } from 'vitest';
import { isEmpty, laterOf, type OwnEntry, readOwnEntry, withDrawn } from './own-entry.ts';

const key = 'rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR w KQkq -';
const blank: OwnEntry = { key, changed: 5, label: 'at the start', href: 'a.html#at-x' };

test('what is drawn twice is gone again', () => {
  const arrow = withDrawn(blank, 'e2', 'e4');
  expect(arrow.arrows).toEqual([{ from: 'e2', to: 'e4' }]);
  const both = withDrawn(arrow, 'd5', 'd5');
  expect(both.marks).toEqual(['d5']);
  expect(isEmpty(withDrawn(withDrawn(both, 'e2', 'e4'), 'd5', 'd5'))).toBe(true);
  expect(withDrawn(arrow, 'e4', 'e2').arrows).toHaveLength(2);
});

test('an entry comes back as it was kept', () => {
  const entry = { ...withDrawn(blank, 'e2', 'e4'), text: 'Mind d4.', bookmark: true };
  expect(readOwnEntry(JSON.parse(JSON.stringify(entry)))).toEqual(entry);
});

test.each([
  ['no object', 'x'],
  ['no key', { ...blank, text: 'x', key: 'e4' }],
  ['markup for a key', { ...blank, text: 'x', key: '<img>' }],
  ['no date', { ...blank, text: 'x', changed: 'now' }],
  ['nothing in it', blank],
  [
    'squares that are none',
    { ...blank, marks: ['z9', 4], arrows: [{ from: 'e2', to: 'e2' }, null] },
  ],
])('of a file, %s is no entry', (_, value) => {
  expect(readOwnEntry(value)).toBeUndefined();
});

test('an address that leads out of the course is left out', () => {
  for (const href of [
    'javascript:alert(1)',
    'https://example.org/',
    '//example.org',
    '../x.html',
  ]) {
    expect(readOwnEntry({ ...blank, text: 'x', href })?.href, href).toBe('');
  }
});

test('of two editions of an entry the later one holds', () => {
  const here = new Map([[key, { ...blank, text: 'here' }]]);
  expect(laterOf(here, [{ ...blank, text: 'older', changed: 4 }])).toEqual([]);
  expect(laterOf(here, [{ ...blank, text: 'later', changed: 6 }])).toHaveLength(1);
});
