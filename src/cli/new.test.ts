import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { loadCourse } from './load-course.ts';
import { lookFolder, lookNames } from './looks.ts';
import { makeNew } from './new.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-new-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));

test.each([
  ['my-course', 'my-course'],
  ['Schwarz gegen 1.d4', 'schwarz-gegen-1-d4'],
  // A number to YAML, and no text, unless it has quotes.
  ['2026', '2026'],
])('a new course in %s is sound and has an id of its own', async (name, id) => {
  const folder = path.join(work, name);
  await makeNew(folder);
  const { course, diagnostics } = await loadCourse(folder);
  expect(diagnostics).toEqual([]);
  expect(course.settings.id).toBe(id);
  expect(readFileSync(path.join(folder, 'course.yaml'), 'utf8').match(/^id:/gm)).toHaveLength(1);
});

test('every finished look is offered', () => {
  const folders = readdirSync(path.dirname(lookFolder('bill')));
  expect(folders.sort()).toEqual([...lookNames].sort());
});

// Contrasts, files of type, parts: what the check says of a theme that anybody writes.
test.each(lookNames)('a new course with the look %s is sound', async (look) => {
  const folder = path.join(work, look);
  await makeNew(folder, { look });
  const { diagnostics } = await loadCourse(folder);
  expect(diagnostics).toEqual([]);
  expect(readFileSync(path.join(folder, 'theme.css'), 'utf8')).toContain('--cover:');
});
