/** A shelf from its folder to its site: what the rooms do together. */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test, vi } from 'vitest';
import { serve } from '../src/cli/serve.ts';
import { previewShelf } from '../src/cli/shelf/preview-shelf.ts';
import { buildShelf, openShelf } from '../src/pipeline/shelf/index.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-shelf-'));
afterAll(() => {
  vi.unstubAllEnvs();
  rmSync(work, { recursive: true, force: true });
});

const folder = path.join(work, 'shelf');
const out = path.join(work, 'site');
const write = (file: string, text: string) => {
  const full = path.join(folder, file);
  mkdirSync(path.dirname(full), { recursive: true });
  writeFileSync(full, text);
};
const chapter = (moves: string, text = '') =>
  `---\ntitle: One\n---\n\n${text}\n\n\`\`\`moves\n${moves}\n\`\`\`\n`;
const built = async () => buildShelf(await openShelf(folder), { out });
const page = (file: string) => readFileSync(path.join(out, file), 'utf8');
const inode = (file: string) => statSync(path.join(out, file)).ino;

test('courses stand below their ids and lead to each other; with one error nothing is published; what has not changed stays', async () => {
  vi.stubEnv('LINEWRIGHT_CACHE', path.join(work, 'cache'));
  vi.stubEnv('LINEWRIGHT_COMPARE_FRESH', '');
  write('shelf.yaml', 'title: All\ncourses: [first, black/second]\n');
  write('first/course.yaml', 'title: Slav\nid: slav\nside: white\n');
  write('first/chapters/1.md', chapter('1. d4 d5 2. c4 c6 3. Nf3 {:here[tabiya]}'));
  write('black/second/course.yaml', 'title: French\nid: french\nside: black\n');
  const sound = chapter('1. e4 e6 2. d4 d5', 'As in [the Slav](pos:slav/tabiya).');
  write('black/second/chapters/1.md', sound);

  const { published, chapters } = await built();
  expect(published?.courses.map(({ id }) => id)).toEqual(['slav', 'french']);
  expect(chapters).toBe(2);
  expect(page('french/1.html')).toContain('<a href="../slav/1.html#tabiya">the Slav</a>');
  expect(page('index.html')).toContain('href="slav/index.html"');
  const before = [inode('slav/1.html'), inode('french/1.html')];

  write('black/second/chapters/1.md', sound.replace('e6', 'Ke5'));
  const stopped = await built();
  expect(stopped.published).toBeUndefined();
  expect(stopped.findings.all.map(({ place, rule }) => `${place.file} ${rule}`)).toEqual([
    'black/second/chapters/1.md move-illegal',
  ]);
  expect([inode('slav/1.html'), inode('french/1.html')]).toEqual(before);

  write('black/second/chapters/1.md', sound.replace('As in', 'Much as in'));
  expect((await built()).published).toBeDefined();
  expect(page('french/1.html')).toContain('Much as in <a href="../slav/1.html#tabiya">');
  expect(inode('slav/1.html')).toBe(before[0]);
  expect(inode('french/1.html')).not.toBe(before[1]);
});

test('dev leads to each course, opens it when it is looked at, and finds one that was added', async () => {
  const preview = previewShelf(folder);
  const { server, address } = await serve((request, response) => {
    void preview.answer(request, response);
  }, 4390);
  vi.spyOn(process.stdout, 'write').mockReturnValue(true);
  const asked = async (path: string) => {
    const answer = await fetch(address + path);
    return `${answer.status} ${new URL(answer.url).pathname} ${await answer.text()}`;
  };
  try {
    expect(await asked('')).toMatch(/^200 \/ .*href="\/slav\/".*href="\/french\/"/s);
    expect(await asked('nowhere/')).toMatch(/^404 .*href="\/slav\/"/s);
    expect(await asked('slav')).toMatch(/^200 \/slav\/ .*<title>Slav/s);
    expect(await asked('slav/1.html')).toMatch(/^200 .*id="tabiya"/s);
    expect(await asked('slav/no.html')).toMatch(/^404 /);
    write('shelf.yaml', 'title: All\ncourses: [first, black/second, third]\n');
    write('third/course.yaml', 'title: [Third\n');
    write('third/chapters/1.md', chapter('1. c4'));
    expect(await asked('')).toContain('href="/third/"');
    expect(await asked('third/')).toMatch(/^200 .*course\.yaml/s);
  } finally {
    server.close();
    await preview.close();
    vi.restoreAllMocks();
  }
});
