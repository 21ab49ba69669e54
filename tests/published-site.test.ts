/** The built program on a small course: what stands in the output, and when it is left alone. */
import { spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { LinkChecker } from 'linkinator';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoBase, demoSite, serveFolder } from './browser/browser.ts';
import { runHere } from './setup/run-here.ts';

const root = path.resolve(import.meta.dirname, '..');
const work = mkdtempSync(path.join(tmpdir(), 'linewright-site-'));
const course = path.join(work, 'course');
const out = path.join(work, 'host', 'courses', 'small');
const chapter = path.join(course, 'chapters', '1.md');

const sound = `---
title: <script>alert(1)</script> & One
---

Prose with <b onclick="alert(2)">HTML</b>, <script>alert(3)</script>, [a link](javascript:alert(4))
and <iframe src="//example.org"></iframe><style>*{color:red}</style>.

![A picture](media/dot.svg), [a handout](media/a%20sheet.pdf), [this chapter][self].

[self]: ./1.md#one

\`\`\`moves
1. e4 {A comment with <script>alert(5)</script> and <img src=x onerror=alert(6)> *kept*.} e5 2. Nf3
\`\`\`
`;

function linewright(...args: readonly string[]) {
  return spawnSync(process.execPath, [path.join(root, 'dist/cli/main.js'), ...args], {
    encoding: 'utf8',
    env: { ...process.env, NO_COLOR: '1', LINEWRIGHT_CACHE: path.join(work, 'cache') },
  });
}

const page = (name: string) => readFileSync(path.join(out, name), 'utf8');

beforeAll(() => {
  mkdirSync(path.join(course, 'chapters'), { recursive: true });
  mkdirSync(path.join(course, 'media'));
  writeFileSync(path.join(course, 'course.yaml'), 'title: Small\nid: small\nside: white\n');
  writeFileSync(path.join(course, 'media/dot.svg'), '<svg xmlns="http://www.w3.org/2000/svg"/>');
  writeFileSync(path.join(course, 'media/a sheet.pdf'), '%PDF-1.7');
  writeFileSync(path.join(course, 'media/unused.pdf'), '');
  writeFileSync(chapter, sound);
  const { status, stderr } = linewright('build', course, '--out', out);
  expect(status, stderr).toBe(0);
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

test('nothing that could run comes from the author, and nothing is fetched', () => {
  // Within a quoted attribute a tag is only text.
  const html = page('1.html').replace(/content="[^"]*"/g, '');
  const scripts = [...html.matchAll(/<script[^>]*>[^<]*/g)].map(([tag]) => tag);
  expect(scripts).toEqual([
    expect.stringMatching(/^<script src="assets\/begin\.[0-9a-f]+\.js"[^>]*>$/),
    expect.stringMatching(/^<script defer src="assets\/course\.[0-9a-f]+\.js">$/),
  ]);
  expect(html).not.toMatch(/<[^>]*\s(on\w+)=/);
  expect(html).not.toMatch(/(?:href|src)="(?:javascript:|https?:|\/\/)/);
  expect(html).not.toMatch(/<iframe|<style/);
  // In a comment HTML shows as text, and Markdown is Markdown.
  expect(html).toContain('&#x3C;script>alert(5)&#x3C;/script>');
  expect(html).toContain('<em>kept</em>');
});

test('what a chapter shows or links is there, and nothing else', () => {
  expect(existsSync(path.join(out, 'media/dot.svg'))).toBe(true);
  expect(existsSync(path.join(out, 'media/a sheet.pdf'))).toBe(true);
  expect(existsSync(path.join(out, 'media/unused.pdf'))).toBe(false);
  expect(page('1.html')).toContain('href="media/a%20sheet.pdf"');
  expect(page('1.html')).toContain('href="#one"');
});

describe('the output', () => {
  test('is left alone by an error, and replaced when it is mended', () => {
    const before = page('1.html');
    writeFileSync(chapter, sound.replace('2. Nf3', '2. Nf4'));
    const failed = linewright('build', course, '--out', out);
    expect(failed.status).toBe(1);
    expect(failed.stderr).toContain('move-illegal');
    expect(failed.stderr).toContain('Nothing was published');
    expect(page('1.html')).toBe(before);
    writeFileSync(chapter, sound.replace('2. Nf3', '2. Nc3'));
    expect(linewright('build', course, '--out', out).status).toBe(0);
    expect(page('1.html')).toContain('-4P3-2N5-');
  });

  test('keeps what a host, a repository or a hand has put into it, and says so', () => {
    mkdirSync(path.join(out, '.git'));
    writeFileSync(path.join(out, '.git/HEAD'), 'ref: refs/heads/pages');
    writeFileSync(path.join(out, 'CNAME'), 'course.example');
    writeFileSync(path.join(out, 'thanks.html'), 'by hand');
    const chapters = path.join(course, 'chapters');
    writeFileSync(path.join(chapters, '2.md'), '---\ntitle: Two\n---\n\nText.\n');
    linewright('build', course, '--out', out);
    expect(existsSync(path.join(out, '2.html'))).toBe(true);
    rmSync(path.join(chapters, '2.md'));
    const { status, stderr } = linewright('build', course, '--out', out);
    expect(status).toBe(0);
    expect(stderr).toContain(`${out} keeps 1 file that no build wrote: thanks.html\n`);
    expect(page('.git/HEAD')).toBe('ref: refs/heads/pages');
    expect(page('CNAME')).toBe('course.example');
    expect(page('thanks.html')).toBe('by hand');
    expect(existsSync(path.join(out, '2.html'))).toBe(false);
    expect(readdirSync(path.dirname(out)).filter((name) => name.startsWith('.'))).toEqual([]);
  });

  test('never replaces a folder that is something else', async () => {
    const foreign = path.join(work, 'foreign');
    mkdirSync(foreign);
    writeFileSync(path.join(foreign, 'thesis.txt'), 'years of work');
    const { status, stderr } = await runHere('build', course, '--out', foreign);
    expect(status).toBe(2);
    expect(stderr).toContain('would be lost');
    expect(readFileSync(path.join(foreign, 'thesis.txt'), 'utf8')).toBe('years of work');
  });
});

test('a build never replaces a folder around the course', async () => {
  const parent = path.join(work, 'parent');
  mkdirSync(path.join(parent, 'c', 'chapters'), { recursive: true });
  writeFileSync(path.join(parent, 'linewright.json'), '{}');
  writeFileSync(path.join(parent, 'c', 'course.yaml'), 'title: Small\nside: white\n');
  writeFileSync(path.join(parent, 'c', 'chapters', '1.md'), sound.replace(/!\[.*/, ''));
  const { status, stderr } = await runHere('build', path.join(parent, 'c'), '--out', parent);
  expect(status).toBe(2);
  expect(stderr).toBe(
    `The folder ${parent} contains the course, which would be lost. Name another folder with --out.\n`,
  );
  expect(readdirSync(path.join(parent, 'c', 'chapters'))).toEqual(['1.md']);
});

test('a site that a killed build had moved away stands again, even if the course has errors now', async () => {
  const { pid } = spawnSync(process.execPath, ['-e', '']);
  const beside = (what: string) => path.join(path.dirname(out), `.small.${what}-${pid}-0a1b2c3d`);
  renameSync(out, beside('old'));
  mkdirSync(beside('new'));
  writeFileSync(path.join(course, 'chapters', '2.md'), 'No title.');
  expect((await runHere('build', course, '--out', out)).status).toBe(1);
  rmSync(path.join(course, 'chapters', '2.md'));
  expect(page('CNAME')).toBe('course.example');
  expect(readdirSync(path.dirname(out))).toEqual(['small']);
});

test('every link of the example course leads somewhere, under a sub-path', async () => {
  const { address, close } = await serveFolder(await demoSite(), demoBase);
  const result = await new LinkChecker()
    .check({ path: `${address}index.html`, recurse: true, checkFragments: true })
    .finally(close);
  const broken = result.links.filter(({ state }) => state === 'BROKEN');
  expect(broken.map(({ url, parent }) => `${url} on ${parent}`)).toEqual([]);
  const visited = result.links.map(({ url }) => url).join(' ');
  for (const name of [
    'isolated-pawn.html',
    'other-answers.html',
    'move-orders.html',
    'positions.html',
    'search.html',
    'tree.html',
    'patterns.html',
    'exercises.html',
  ]) {
    expect(visited).toContain(demoBase + name);
  }
});

test('check --fix changes only the words it names, keeps line ends and byte order mark, and is done at once', async () => {
  const text =
    '\uFEFF---\r\ntitle: One\r\n---\r\n\r\n```moves\r\n1. e4 e5 2. Qh5 Nc6 4. Qxf7 {0-0 stays 0-0}\r\n```\r\n';
  writeFileSync(chapter, text);
  const fixed = text.replace('4. Qxf7', '3. Qxf7+');
  await runHere('check', course, '--fix');
  expect(readFileSync(chapter, 'utf8')).toBe(fixed);
  await runHere('check', course, '--fix');
  expect(readFileSync(chapter, 'utf8')).toBe(fixed);
});

test('check --format json has the published shape', async () => {
  writeFileSync(chapter, '---\ntitle: One\n---\n\n```moves\n1. e4 e5 2. Ke3\n```\n');
  const { status, stdout } = await runHere('check', course, '--format', 'json');
  expect(status).toBe(1);
  const { diagnostics } = JSON.parse(stdout);
  expect(diagnostics).toEqual([
    {
      rule: 'move-illegal',
      severity: 'error',
      file: 'chapters/1.md',
      start: { line: 6, column: 13 },
      end: { line: 6, column: 16 },
      message: expect.stringMatching(/^2\.Ke3 cannot be played: .*\.$/),
      hint: 'Did you mean Ke2?',
      related: [],
    },
  ]);
});

test('a command that does not exist ends with 2 and says where to look', async () => {
  const { status, stderr } = await runHere('publish');
  expect(status).toBe(2);
  expect(stderr).toContain("unknown command 'publish'");
  expect((await runHere('--help')).stdout).toContain('check');
});
