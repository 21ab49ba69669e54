import { expect, test } from 'vitest';
import type { LineStore } from '../../files/index.ts';
import { courseOf } from '../../model/testing/course-of.ts';
import { openHeld } from './held-parts.ts';

const course = courseOf({ 'chapters/1.md': 'Words.', 'chapters/2.md': 'Words.' });

/** A store of which one line is told. */
function storeOf() {
  let line: Buffer | undefined;
  let written = 0;
  const store: LineStore = {
    get: () => line,
    set(_name, given) {
      line = Buffer.from(typeof given === 'function' ? given() : given);
      written++;
    },
    save: async () => {},
  };
  return { store, written: () => written };
}

const faces = (...all: readonly string[]) =>
  new Map(all.map((face, index) => [`chapters/${index + 1}.md`, face]));
const kept = new Map([
  ['chapters/1.md', 'kept 1'],
  ['chapters/2.md', 'kept 2'],
]);

test('what held for the same face is known, unless it is another by now', () => {
  const { store, written } = storeOf();
  openHeld(store, course, faces('a', 'b')).put(kept);
  const again = openHeld(store, course, faces('a', 'b'));
  expect(again.isKnown('chapters/1.md', 'kept 1')).toBe(true);
  expect(again.isKnown('chapters/1.md', 'of another process')).toBe(false);
  expect(again.isKnown('chapters/3.md', 'kept 1')).toBe(false);
  again.put(kept);
  expect(written()).toBe(1);
});

test('a new face of one chapter leaves what was asked of the others', () => {
  const { store } = storeOf();
  openHeld(store, course, faces('a', 'b')).put(kept);
  const changed = openHeld(store, course, faces('a', 'c'));
  expect(changed.isKnown('chapters/1.md', 'kept 1')).toBe(false);
  const isUnchanged = changed.since('chapters/1.md', 'kept 1');
  expect(isUnchanged?.('chapters/1.md')).toBe(true);
  expect(isUnchanged?.('chapters/2.md')).toBe(false);
  expect(changed.since('chapters/1.md', 'of another process')).toBeUndefined();
});

test('where a chapter came, or the settings are others, everything is asked', () => {
  const { store } = storeOf();
  openHeld(store, course, faces('a', 'b')).put(kept);
  const more = openHeld(store, course, faces('a', 'b', 'c'));
  expect(more.since('chapters/1.md', 'kept 1')).toBeUndefined();
  const settings = { ...course.settings, title: 'Another' };
  const other = openHeld(store, { ...course, settings }, faces('a', 'b'));
  expect(other.isKnown('chapters/1.md', 'kept 1')).toBe(false);
  expect(other.since('chapters/1.md', 'kept 1')).toBeUndefined();
});
