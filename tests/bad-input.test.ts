/**
 * Bad input to the program: one clear message each, with its place and what to do. The console output
 * stands in bad-input.expected.txt; UPDATE=1 writes it anew, for reading.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { type Ran, runHere } from './setup/run-here.ts';

const cli = path.resolve(import.meta.dirname, '../dist/cli/main.js');
const expectedFile = new URL('./bad-input.expected.txt', import.meta.url);
const work = mkdtempSync(path.join(tmpdir(), 'linewright-bad-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));

type Files = Readonly<Record<string, string | Uint8Array>>;

const settings = 'title: A course\nid: a-course\nside: white\n';
const chapter = (text: string) => `---\ntitle: One\n---\n\n${text}\n`;
const moves = (text: string, attributes = '') =>
  chapter(`\`\`\`moves${attributes}\n${text}\n\`\`\``);
const course = (text: string | Uint8Array, more: Files = {}): Files => ({
  'course.yaml': settings,
  'chapters/1.md': text,
  ...more,
});
const fen = (text: string) => course(moves('', ` fen="${text}"`));

const cases: Readonly<Record<string, Files>> = {
  'a folder that is no course': { 'notes.txt': 'Nothing.' },
  'a course without chapters': { 'course.yaml': settings },
  'broken YAML in front matter': course('---\ntitle: "One\n---\n\nText.\n'),
  'no title': course('---\nsummary: None\n---\n'),
  'front matter that is never closed': course('---\ntitle: One\n\nText.\n'),
  'front matter behind an empty line': course('\n---\ntitle: One\n---\n'),
  'no front matter': course('Text.\n'),
  'no side': { ...course(chapter('Text.')), 'course.yaml': 'title: A course\nid: a-course\n' },
  'a value with a colon': {
    ...course(chapter('Text.')),
    'course.yaml': `summary: One: two\n${settings}`,
  },
  'not UTF-8 but Latin-1': course(Buffer.from(chapter('Die Er\u00f6ffnung.'), 'latin1')),
  'not UTF-8 but UTF-16': course(Buffer.from(`\uFEFF${chapter('Text.')}`, 'utf16le')),
  'a chapter of 5 MB': course(chapter('word '.repeat(1_048_576))),
  'an unclosed variation': course(moves('1. e4 e5 (1... c5 2. Nf3')),
  'an unclosed comment': course(moves('1. e4 {Best by test. e5 2. Nf3')),
  'an unclosed block': course('---\ntitle: One\n---\n\n```moves\n1. e4\n'),
  'a block that is closed only by the next': course(
    chapter('```moves\n1. e4 e5 2. Nf3\n\nText.\n\n```moves\n1. d4 d5 2. c4\n```'),
  ),
  'text that is nested too deep': course(chapter(`${'>'.repeat(200)} Text.`)),
  'a picture of another site, by reference': course(
    chapter('![x][y]\n\n[y]: https://example.org/x.png'),
  ),
  'a picture in its address': course(chapter('<img src="data:image/gif;base64,AAAA">')),
  'a picture with a script in it': course(chapter('Here it is: ![The plan](media/plan.svg).'), {
    'media/plan.svg':
      '<?xml version="1.0"?>\n<svg xmlns="http://www.w3.org/2000/svg">\n  <rect onclick="a()"/><script href="https://example.org/a.js"/>\n</svg>\n',
  }),
  'a page that is called as one of the site': course(chapter('Text.'), {
    'pages/2-search.md': '---\ntitle: Find us\n---\n',
  }),
  'a word that no page knows': course(chapter('Text.'), {
    'pages/about.md': '---\ntitle: About\nin: top\n---\n',
  }),
  'pages that are a file': course(chapter('Text.'), { pages: 'About us.' }),
  'a folder that is both a course and a shelf': course(chapter('Text.'), {
    'shelf.yaml': 'title: All\ncourses: [slav]\n',
  }),
  'several folders of a shelf that are no courses': {
    'shelf.yaml':
      'title: All\nauther: A. Coach\ncourses:\n  - slav\n  - ./slav/\n  - .\n  - ../slav\n  - slaw\n  - slav/deeper\n  - twin\n  - notes\n',
    'slav/course.yaml': settings,
    'slav/chapters/1.md': chapter('Text.'),
    'slav/deeper/course.yaml': settings,
    'twin/course.yaml': settings,
    'twin/chapters/1.md': chapter('Text.'),
    'notes/1.md': 'Text.',
  },
  'a page that is called a picture': course(chapter('![x](media/x.png)'), {
    'media/x.png': '<!doctype html><script>1</script>',
  }),
  'a photo that is called otherwise': course(chapter('![x](media/x.png)'), {
    'media/x.png': Buffer.from('\xff\xd8\xff\xe0\0\x10JFIF\0', 'latin1'),
  }),
  'settings of a server': course(chapter('[x](media/.htaccess)'), {
    'media/.htaccess': 'AddType text/html .png',
  }),
  'a file that a server would run': course(chapter('[x](media/x.php.png)'), {
    'media/x.php.png': '<?php 1 ?>',
  }),
  'blocks that start from each other': course(
    `${moves('1. e4 {:here[a]} e5 2. Nf3', ' from="b"')}\n${moves('1... c5 {:here[b]} 2. Nf3', ' from="a"').slice(20)}`,
  ),
  'a chapter whose name ends otherwise': course(chapter('Text.'), { 'chapters/2.MD': 'Text.' }),
  'a label given twice': course(moves('1. e4 {:here[x]} e5 2. Nf3 {:here[x]}')),
  'a label that two chapters fight for': course(moves('1. e4 {:here[x]} e5 2. Nf3'), {
    'chapters/2.md': moves('1. e4 e5 2. Nf3 Nc6 3. Bb5 {:here[x]}'),
  }),
  'a FEN with two kings of one colour': fen('4k3/8/8/8/8/8/8/K3K3 w - - 0 1'),
  'a FEN with a pawn on the last rank': fen('4k2P/8/8/8/8/8/8/4K3 w - - 0 1'),
  'a FEN with the side not to move in check': fen('k7/8/8/8/Q7/8/8/1K6 w - - 0 1'),
  'variations nested 500 deep': course(
    moves(`1. e4 ${'(1. d4 '.repeat(500)}${')'.repeat(500)} e5 2. Nf3`),
  ),
  'a picture outside the course': course(chapter('![x](../../secret.png)')),
  'a picture outside the course, encoded': course(chapter('![x](%2e%2e/%2e%2e/secret.png)')),
  'a picture by its path on this computer': course(chapter('![x](/home/coach/board.png)')),
  'a picture of another site': course(chapter('![x](https://example.org/x.png)')),
  'an unknown setting': {
    ...course(chapter('Text.')),
    'course.yaml': `${settings}colour: red\n`,
  },
  'a setting of the wrong type': {
    ...course(chapter('Text.')),
    'course.yaml': 'title: 7\nside: white\n',
  },
  'an unknown attribute': course(moves('1. e4', ' form="x"')),
  'a rule that cannot be switched off': {
    ...course(chapter('Text.')),
    'course.yaml': `${settings}rules:\n  move-illegal: off\n`,
  },
  'a rule of the course that throws': {
    ...course(chapter('Text.')),
    'course.yaml': `${settings}own-rules:\n  - a.mjs\n`,
    'rules/a.mjs': `import { defineCourseRule } from 'linewright/rules';\nexport default defineCourseRule({ id: 'a', severity: 'error', finds: 'x',\n  inChapter: ({ chapter }) => chapter.lines.length });\n`,
  },
  'a theme with a type face that is none': {
    ...course(chapter('Text.')),
    'theme.css': '@font-face {\n  font-family: A;\n  src: url(media/a.woff2);\n}\n',
    'media/a.woff2': 'no type face',
  },
  'a theme that fetches': {
    ...course(chapter('Text.')),
    'theme.css': '@import url(https://x.example/a.css);\n:root {\n  --measure: 30rem;\n}\n',
  },
  'a theme that cannot be read on paper': {
    ...course(chapter('Text.')),
    'theme.css': '@media print {\n  :root {\n    --quiet: #aaaaaa;\n  }\n}\n',
  },
  'a link to a chapter that is none': course(chapter('[There](2.md).')),
  'a directive without brackets': course(moves('1. e4 e5 {:end} 2. Nf3')),
  'a directive with two colons': course(`${moves('1. e4 e5 2. Nf3')}\n::claim[mate]\n`),
  'a game without moves': course(chapter('```game\n[White "A. Coach"]\n```')),
  'a game of a file, and in the block': course(chapter('```game file="games/a.pgn"\n1. e4\n```'), {
    'games/a.pgn': '1. d4 *\n',
  }),
  'a game that is shown backwards': course(chapter('```game from=2 to=1\n1. e4 e5 2. Nf3\n```')),
  'a game from a FEN that is none': course(
    chapter('```game\n[FEN "4k3/8/8/8/8/8/8/4K2R w KQ - 0 30"]\n\n30. O-O Kd7 *\n```'),
  ),
  'a game file that is none': course(chapter('```game file="games/a.pgn"\n```')),
  'an exercise without an answer': course(
    chapter('```exercise after="1. e4"\nask: Which reply?\nanswer: ""\n```'),
  ),
  'a pattern with two pieces on one square': course(
    chapter('```pattern\ntitle: Both\nwhite: d4\nblack: d4\n```'),
  ),
  'several faults in one run': course(
    `${moves('1. e5 (1. d4 Nd5) e4')}\n[x](pos:nowhere), \`9.Qh8\`\n`,
    { 'chapters/2.md': moves('1. e4 e5 3. Nf3') },
  ),
};

function write(name: string, files: Files): string {
  const folder = path.join(work, name.replaceAll(/\W+/g, '-'));
  mkdirSync(folder, { recursive: true });
  for (const [file, content] of Object.entries(files)) {
    mkdirSync(path.dirname(path.join(folder, file)), { recursive: true });
    writeFileSync(path.join(folder, file), content);
  }
  return folder;
}

const outputOf = ({ status, stdout, stderr }: Ran, folder: string) =>
  `exit ${status ?? 0}\n${stdout}${stderr}`.replaceAll(folder, 'FOLDER');

const checkHere = async (folder: string) => outputOf(await runHere('check', folder), folder);

function checkByProgram(folder: string): string {
  const args = [cli, 'check', folder];
  return outputOf(spawnSync(process.execPath, args, { encoding: 'utf8' }), folder);
}

/** These go through the built program: an error, findings of several chapters, a rule that is loaded beside it. */
const byProgram: ReadonlySet<string> = new Set([
  'a folder that is no course',
  'several faults in one run',
  'a rule of the course that throws',
]);
const names = ['a folder that does not exist', 'a file instead of a folder', ...Object.keys(cases)];
const outputs = new Map<string, string>();

beforeAll(async () => {
  vi.stubEnv('NO_COLOR', '1');
  vi.stubEnv('LINEWRIGHT_CACHE', path.join(work, 'cache'));
  outputs.set('a folder that does not exist', await checkHere(path.join(work, 'nowhere')));
  outputs.set('a file instead of a folder', await checkHere(cli));
  for (const [name, files] of Object.entries(cases)) {
    const folder = write(name, files);
    outputs.set(name, byProgram.has(name) ? checkByProgram(folder) : await checkHere(folder));
  }
});
afterAll(() => vi.unstubAllEnvs());

test('every message is the one that was read and approved', () => {
  const all = [...outputs].map(([name, output]) => `=== ${name}\n${output}`).join('\n');
  if (process.env.UPDATE) writeFileSync(expectedFile, all);
  expect(all).toBe(readFileSync(expectedFile, 'utf8'));
});

for (const name of names.filter((each) => !each.startsWith('several'))) {
  test(`${name}: one message, and no crash`, () => {
    const output = outputs.get(name) ?? '';
    expect(output).not.toContain('fault in Linewright');
    const findings = output.match(/^\S+:\d+:\d+ {2}(error|warning)/gm) ?? [];
    if (output.startsWith('exit 2')) expect(findings).toEqual([]);
    else expect(findings).toHaveLength(1);
  });
}
