/** The handbook's page of promises cannot go stale: each names a test that is there. */
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';

const root = path.resolve(import.meta.dirname, '..');
const page = readFileSync(path.join(root, 'content/handbook/chapters/10-promises.md'), 'utf8');

const rows = page
  .split('\n')
  .filter((line) => line.startsWith('| '))
  .map((line) => line.split('|').slice(1, -1))
  .map((cells) => cells.map((cell) => cell.trim()))
  .filter(([first]) => first !== 'promise' && first !== '---');

test('each row has a sentence, a file and a title', () => {
  expect(rows.length).toBeGreaterThan(20);
  for (const cells of rows) {
    expect(cells).toHaveLength(3);
    expect(cells[0]).toMatch(/^\S.*\.$/);
  }
});

test.each(rows)('%s', (_promise, written = '', title = '') => {
  const file = /^`(.+\.test\.ts)`$/.exec(written)?.[1] ?? '';
  expect(existsSync(path.join(root, file)), written).toBe(true);
  // As the title of a test or a group, or a part of one that has a variable in it.
  const source = readFileSync(path.join(root, file), 'utf8');
  const titles = [...source.matchAll(/(['"`])((?:(?!\1)[^\\\n]|\\.)*)\1/g)].map(
    ([, , text]) => text,
  );
  expect(
    titles.filter((text) => text?.includes(title)),
    title,
  ).not.toEqual([]);
});
