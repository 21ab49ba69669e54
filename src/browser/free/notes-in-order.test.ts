import { expect, test } from 'vitest';
import { initialPosition } from '../../chess/initial.ts';
import { playSan } from '../../chess/rules.ts';
import { tableOf } from '../../lookup/testing/table-of.ts';
import { stringsFor } from '../../strings/index.ts';
import { notesAsText } from './notes-as-text.ts';
import { inOrder } from './notes-in-order.ts';
import type { OwnEntry } from './own-entry.ts';

const en = stringsFor('en');

const table = tableOf('1. e4 e5 2. Nf3 Nc6');

function noteAfter(label: string, ...sans: readonly string[]): OwnEntry {
  let at = initialPosition;
  for (const san of sans) at = playSan(at, san)?.after ?? at;
  return { key: at.key, text: `Note ${label}`, changed: sans.length, label, href: '' };
}

const late = noteAfter('late', 'e4', 'e5', 'Nf3');
const early = noteAfter('early', 'e4');
const own = noteAfter('own', 'a3', 'a6');

test('notes stand in the order of the course, those of own lines behind', () => {
  const groups = inOrder([own, late, early], table, 'Beside');
  expect(groups.map(({ entries }) => entries.map(({ label }) => label))).toEqual([
    ['early', 'late'],
    ['own'],
  ]);
  expect(groups[1]?.title).toBe('Beside');
});

test('as a text they have the position, what was written and what was drawn', () => {
  const drawn = { ...own, bookmark: true, marks: ['e4'], arrows: [{ from: 'a2', to: 'a3' }] };
  const text = notesAsText('A course', inOrder([drawn], table, 'Beside'), en.free);
  expect(text).toContain('own [Bookmark]');
  expect(text).toContain('FEN: rnbqkbnr/1ppppppp/p7/8/8/P7/1PPPPPPP/RNBQKBNR w KQkq - 0 1');
  expect(text).toContain('Note own');
  expect(text).toContain('Yours: arrow a2 to a3, mark on e4.');
});
