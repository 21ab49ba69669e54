import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { DeskRefusal } from './desk-door.ts';
import { editorVariable, openInEditor } from './open-in-editor.ts';

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'linewright-editor-'));
});
afterAll(() => rm(folder, { recursive: true }));

const file = 'chapters/a b; touch c $(touch d).md';

test('a place is opened by the command, each value within its word, and no shell sees it', async () => {
  const editor = path.join(folder, 'an editor.cjs');
  const told = path.join(folder, 'told.json');
  const script = `require('fs').writeFileSync(${JSON.stringify(told)}, JSON.stringify(process.argv.slice(2)))`;
  await writeFile(editor, script);
  const opens = openInEditor(
    folder,
    `"${process.execPath}" "${editor}" -g {file}:{line}:{column} --wait`,
    (each) => (each === file ? file : undefined),
  );
  await opens?.routes.open({ file, line: 3, column: 7 });
  await expect
    .poll(() => readFile(told, 'utf8').catch(() => ''))
    .toBe(JSON.stringify(['-g', `${path.join(folder, file)}:3:7`, '--wait']));
});

test.each([
  ['what is no file of the course', { file: '../secret', line: 1, column: 1 }],
  ['a line that is none', { file, line: '1; touch x', column: 1 }],
  ['a column that is none', { file, line: 1, column: 0.5 }],
  ['no place at all', undefined],
])('%s is refused', async (_, asked) => {
  const opens = openInEditor(folder, 'false {file}', (each) => (each === file ? file : undefined));
  await expect(opens?.routes.open(asked)).rejects.toThrow(DeskRefusal);
});

test('an editor that is not there is told', async () => {
  const opens = openInEditor(folder, './no-such-editor {file}', () => file);
  await expect(opens?.routes.open({ file, line: 1, column: 1 })).rejects.toThrow(
    /The editor could not be started: .*ENOENT/,
  );
});

test('without a command there is no editor, unless the environment names one', () => {
  expect(openInEditor(folder, undefined, () => file)).toBeUndefined();
  process.env[editorVariable] = 'edit {file}';
  expect(openInEditor(folder, undefined, () => file)).toBeDefined();
  delete process.env[editorVariable];
  expect(() => openInEditor(folder, 'edit', () => file)).toThrow(
    'does not say where the file goes',
  );
});
