/**
 * Type-checks the Astro pages, which `tsc` does not read: each becomes TSX beside nothing else, in a folder that
 * TypeScript takes for a second `src` (`rootDirs`). What it finds is told at its place in the page.
 */
import { spawnSync } from 'node:child_process';
import { globSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { type ConvertToTsxResult, convertToTsx } from '@astrojs/astro2tsx';

const root = path.resolve(import.meta.dirname, '..');
const folder = path.join(root, 'node_modules/.cache/astro-types');
rmSync(folder, { recursive: true, force: true });

interface Page {
  readonly file: string;
  readonly source: string;
  readonly made: ConvertToTsxResult;
}

const pages = new Map<string, Page>();
for (const file of globSync('src/**/*.astro', { cwd: root })) {
  const source = readFileSync(path.join(root, file), 'utf8');
  const made = convertToTsx(source, { filename: file });
  const out = path.join(folder, `${path.relative('src', file)}.tsx`);
  mkdirSync(path.dirname(out), { recursive: true });
  writeFileSync(out, made.code);
  pages.set(path.relative(root, out), { file, source, made });
}

const config = {
  extends: path.join(root, 'tsconfig.json'),
  compilerOptions: {
    module: 'ESNext',
    moduleResolution: 'Bundler',
    jsx: 'preserve',
    rootDir: root,
    rootDirs: [path.join(root, 'src'), folder],
    types: ['node', 'astro/astro-jsx'],
    // As a site finds it once the package is built.
    paths: { 'linewright/astro': [path.join(root, 'src/astro/index.ts')] },
    // What is made for the check declares more than it uses.
    noUnusedLocals: false,
    noUnusedParameters: false,
    rewriteRelativeImportExtensions: false,
  },
  include: [
    `${folder}/**/*.tsx`,
    path.join(root, 'node_modules/astro/env.d.ts'),
    path.join(root, 'src/site/env.d.ts'),
  ],
  exclude: [],
};
const configFile = path.join(folder, 'tsconfig.json');
writeFileSync(configFile, JSON.stringify(config));
const { stdout, status } = spawnSync(
  path.join(root, 'node_modules/.bin/tsc'),
  ['--noEmit', '--pretty', 'false', '--checkers', '2', '-p', configFile],
  { cwd: root, encoding: 'utf8' },
);
process.stdout.write(stdout.replace(/^(\S+\.tsx)\((\d+),(\d+)\)/gm, inPage));
process.exitCode = status ?? 1;

/** A place in what was made as one in the page that it was made from. */
function inPage(place: string, made: string, line: string, column: string): string {
  const page = pages.get(made);
  if (page === undefined) return place;
  const lines = page.made.code.split('\n').slice(0, Number(line) - 1);
  const offset = lines.reduce((sum, each) => sum + each.length + 1, Number(column) - 1);
  const span = page.made.mappings.findLast(([start]) => start <= offset);
  if (span === undefined) return page.file;
  const [start, length, original] = span;
  const before = page.source.slice(0, original + Math.min(offset - start, length)).split('\n');
  return `${page.file}(${before.length},${(before.at(-1)?.length ?? 0) + 1})`;
}
