import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { calledAs, shellWord } from './called-as.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-called-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));
for (const name of ['bin', 'project/node_modules/.bin', 'package/dist/cli']) {
  mkdirSync(path.join(work, name), { recursive: true });
}
const main = path.join(work, 'package/dist/cli/main.js');
const global = path.join(work, 'bin/linewright');
const local = path.join(work, 'project/node_modules/.bin/linewright');
writeFileSync(main, '');
symlinkSync(main, global);
symlinkSync(main, local);
const folder = path.join(work, 'project');
const onPath = { PATH: [path.dirname(local), path.dirname(global)].join(path.delimiter) };

test.each([
  ['npx, in a project', { script: local, env: { npm_command: 'exec' } }, 'npx linewright'],
  [
    'npx, from a packed file',
    { script: local, env: { npm_command: 'exec', npm_config_package: './a b.tgz' } },
    `npx --package './a b.tgz' linewright`,
  ],
  [
    'a script of package.json',
    { script: local, env: { npm_command: 'run-script', ...onPath } },
    'npx linewright',
  ],
  ['its name, installed for all', { script: global, env: onPath }, 'linewright'],
  ['a path that no shell searches', { script: global, env: {} }, '../bin/linewright'],
  ['its file in a project', { script: local, env: {} }, 'node_modules/.bin/linewright'],
  ['node', { script: main, env: {} }, 'node ../package/dist/cli/main.js'],
])('called by %s', (_, call, told) => {
  expect(calledAs({ folder, ...call })).toBe(told);
});

test('a program of the same name that is another one is not named', () => {
  const other = path.join(work, 'other');
  mkdirSync(other);
  writeFileSync(path.join(other, 'linewright'), '');
  const env = { PATH: [other, path.dirname(global)].join(path.delimiter) };
  expect(calledAs({ script: global, env, folder })).toBe('../bin/linewright');
});

test('a path far away is told whole', () => {
  const away = path.join(folder, 'a/b/c');
  expect(calledAs({ script: main, env: {}, folder: away })).toBe(`node ${main}`);
});

test('a word keeps its place in a command line', () => {
  expect(['my-course', "it's mine", ''].map(shellWord)).toEqual([
    'my-course',
    `'it'\\''s mine'`,
    `''`,
  ]);
});
