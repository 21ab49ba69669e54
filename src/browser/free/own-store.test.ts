import { expect, test } from 'vitest';
import type { OwnEntry } from './own-entry.ts';
import { type Keeper, openOwnStore } from './own-store.ts';

function keeperOf(items = new Map<string, string>()): Keeper & { items: Map<string, string> } {
  return {
    items,
    get length() {
      return items.size;
    },
    key: (index) => [...items.keys()][index] ?? null,
    getItem: (name) => items.get(name) ?? null,
    setItem: (name, value) => void items.set(name, value),
    removeItem: (name) => void items.delete(name),
  };
}
const entry: OwnEntry = {
  key: '4k3/8/8/8/8/8/8/4K3 w - -',
  changed: 1,
  label: '',
  href: '',
  text: 'Mine.',
};

test('what is kept is there for the next page, and only in its course', () => {
  const keeper = keeperOf();
  expect(openOwnStore('a', keeper).keep(entry)).toBe(true);
  expect([...openOwnStore('a', keeper).entries.values()]).toEqual([entry]);
  expect(openOwnStore('b', keeper).entries.size).toBe(0);
});

test('an entry with nothing in it is gone, and comes back by undoing', () => {
  const keeper = keeperOf();
  const store = openOwnStore('a', keeper);
  store.keep(entry);
  store.keep({ ...entry, text: ' ' });
  expect(keeper.items.size).toBe(0);
  expect(store.undo()).toBe(true);
  expect(store.entries.get(entry.key)).toEqual(entry);
  expect(keeper.items.size).toBe(1);
  expect([store.undo(), store.undo()]).toEqual([true, false]);
  expect(keeper.items.size).toBe(0);
});

test('a browser that keeps nothing is told of, and the page goes on', () => {
  const full = {
    ...keeperOf(),
    length: 0,
    setItem: () => {
      throw new Error('full');
    },
  };
  const store = openOwnStore('a', full);
  expect(store.keep(entry)).toBe(false);
  expect(store.entries.size).toBe(1);
  expect(openOwnStore('a', undefined).keep(entry)).toBe(false);
});

test('damage in the storage is no entry', () => {
  const keeper = keeperOf(
    new Map([
      ['own:a:x', '{'],
      ['own:a:4k3', JSON.stringify(entry)],
    ]),
  );
  expect(openOwnStore('a', keeper).entries.size).toBe(0);
});
