/** What the program is made with: each package has a reason, and what must start fast loads little. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { listDependencies } from '../scripts/dependencies/list.ts';
import { makeDependenciesPage } from '../scripts/dependencies/page.ts';
import { reasons } from '../scripts/dependencies/reasons.ts';

const typesOnly = (name: string) => name.startsWith('@types/');

test('each package has a reason, and each reason its package', () => {
  const { dependencies, devDependencies } = JSON.parse(
    readFileSync(new URL('../package.json', import.meta.url), 'utf8'),
  );
  const names = Object.keys({ ...dependencies, ...devDependencies });
  expect(Object.keys(reasons).sort()).toEqual(names.filter((name) => !typesOnly(name)).sort());
});

test('no licence binds the program or what it publishes', () => {
  const free =
    /^(?:MIT(?:-0)?|ISC|BSD-[23]-Clause|Apache-2\.0|MPL-2\.0|OFL-1\.1|0BSD|BlueOak-1\.0\.0|CC0-1\.0)$/;
  const { rows } = listDependencies('dependencies');
  expect(rows.filter(({ licence }) => !free.test(licence))).toEqual([]);
});

test('DEPENDENCIES.md is fresh', () => {
  const page = readFileSync(new URL('../DEPENDENCIES.md', import.meta.url), 'utf8');
  const unsized = page
    .replace(/^\d+ packages, [\d.]+ MB$/gm, '')
    .replace(/^(\|(?:[^|]*\|){3})[^|]*\|[^|]*\|/gm, '$1');
  expect(unsized, 'renew it with: node scripts/make-dependencies-page.ts').toBe(
    makeDependenciesPage({ sized: false }),
  );
});

describe('nothing native, nothing of Astro and no drawing is loaded by', () => {
  const work = mkdtempSync(path.join(tmpdir(), 'linewright-loaded-'));
  afterAll(() => rmSync(work, { recursive: true, force: true }));
  mkdirSync(path.join(work, 'chapters'));
  writeFileSync(
    path.join(work, 'course.yaml'),
    'title: A\nside: white\nid: loaded\nsite: https://example.org\n',
  );
  writeFileSync(
    path.join(work, 'chapters/1.md'),
    '---\ntitle: One\n---\n\n```moves\n1. e4 e5 2. Nf3 Nc6 3. Bb5 =\n```\n',
  );
  // A letter of it needs no picture.
  writeFileSync(path.join(work, 'chapters/2.md'), '---\ntitle: Two\n---\n\nWords alone.\n');
  const heavy = /\.node$|\/(?:@?astro(?:js)?|@resvg|satori|harfbuzzjs|pagefind|@pagefind)\//;

  /** The modules that a command loads. */
  function loaded(...args: readonly string[]): string[] {
    const log = path.join(work, 'log.txt');
    rmSync(log, { force: true });
    const hook = new URL('./setup/log-modules.mjs', import.meta.url).href;
    const { status, stderr } = spawnSync(process.execPath, ['--import', hook, ...args], {
      cwd: work,
      encoding: 'utf8',
      input: '',
      env: { ...process.env, LOADED_LOG: log, LINEWRIGHT_CACHE: path.join(work, 'cache') },
    });
    expect(status, stderr).not.toBe(2);
    return readFileSync(log, 'utf8').trim().split('\n');
  }
  const dist = (file: string) => path.resolve(import.meta.dirname, '../dist', file);

  test.each([['check'], ['lsp'], ['letter', '2'], ['export', '--format', 'pgn'], ['gaps']])(
    '%s',
    (...args) => {
      const modules = loaded(dist('cli/main.js'), ...args);
      expect(modules.some((url) => url.endsWith('/dist/cli/run.js'))).toBe(true);
      expect(modules.filter((url) => heavy.test(url))).toEqual([]);
    },
  );

  test('the remark plugin, which loads nothing but itself', () => {
    const plugin = dist('remark/bundle.js');
    expect(loaded(plugin).filter((url) => !url.startsWith('node:'))).toEqual([
      expect.stringMatching(/\/dist\/remark\/bundle\.js$/),
    ]);
  });

  test('while the log sees what a diagram as PNG loads', () => {
    const fen = '8/8/8/8/8/8/8/K1k5 w - - 0 1';
    const out = path.join(work, 'a.png');
    const modules = loaded(dist('cli/main.js'), 'diagram', '--fen', fen, '--out', out);
    expect(modules.filter((url) => heavy.test(url))).not.toEqual([]);
  });
});
