/** The integration in a site of Astro's: pages of a course, components and a collection in one build. */
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { generate, parse, walk } from 'css-tree';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

const root = path.resolve(import.meta.dirname, '..');
const work = mkdtempSync(path.join(tmpdir(), 'linewright-astro-'));
const files: Readonly<Record<string, string>> = {
  'package.json': '{ "name": "a-club", "private": true, "type": "module" }',
  'src/layouts/Base.astro': `---
const { title, description } = Astro.props;
---
<html lang="en"><head><meta charset="utf-8"><title>{title} | The club</title><meta name="description" content={description}></head>
<body><slot /></body></html>
`,
  'src/content.config.ts': `import { defineCollection } from 'astro:content';
import { courseLoader } from 'linewright/astro';
export const collections = { italian: defineCollection({ loader: courseLoader({ course: './course' }) }) };
`,
  'src/pages/index.astro': `---
import { getCollection, render } from 'astro:content';
import { Board, Exercise, Moves } from 'linewright/astro/components';
const chapters = await getCollection('italian');
const { Content } = await render(chapters[0]);
---
<html lang="en"><body><ol>{chapters.map(({ data }) => <li><a href={data.href}>{data.title}</a></li>)}</ol>
<Board at="italian" course="courses/italian" /><Moves moves="1. e4 e5" /><Exercise ask="So?" answer="e4" /><Content /></body></html>
`,
};
const page = (file: string) => readFileSync(path.join(work, 'dist', file), 'utf8');

beforeAll(async () => {
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(path.dirname(path.join(work, file)), { recursive: true });
    writeFileSync(path.join(work, file), text);
  }
  mkdirSync(path.join(work, 'node_modules'));
  symlinkSync(path.join(root, 'node_modules/astro'), path.join(work, 'node_modules/astro'));
  symlinkSync(root, path.join(work, 'node_modules/linewright'));
  symlinkSync(path.join(root, 'content/starter'), path.join(work, 'course'));
  process.env.ASTRO_TELEMETRY_DISABLED = '1';
  const { build } = await import('astro');
  const { default: linewright } = await import(
    pathToFileURL(path.join(root, 'dist/astro/index.js')).href
  );
  await build({
    root: work,
    configFile: false,
    logLevel: 'error',
    base: '/club',
    integrations: [
      linewright([
        { course: './course', path: '/courses/italian', layout: './src/layouts/Base.astro' },
        { course: './course', path: '/plain' },
      ]),
    ],
  });
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

test('a course has its own pages below its path', () => {
  expect(page('plain/the-main-line.html')).toContain('<main class="reading"');
  expect(page('plain/offline.js')).not.toBe('');
});

describe('in a layout of the site', () => {
  test('chapters and contents have it, at the addresses of the site and of the course', () => {
    const chapter = page('courses/italian/the-main-line/index.html');
    expect(chapter).toContain('<title>The main line | The club</title>');
    expect(chapter).toContain('<div class="linewright chapter"');
    expect(page('courses/italian/the-main-line.html')).toBe(chapter);
    expect(page('courses/italian/index.html')).toContain('| The club</title>');
  });

  test('all that it loads is there, and nothing of it would be kept as it was', () => {
    const chapter = page('courses/italian/the-main-line.html');
    const loaded = [...chapter.matchAll(/ (?:src|href)="\/club\/([^"#]+\.(?:js|css))"/g)].map(
      ([, file = '']) => file,
    );
    expect(loaded.length).toBeGreaterThan(3);
    expect(loaded.filter((file) => !existsSync(path.join(work, 'dist', file)))).toEqual([]);
    expect(existsSync(path.join(work, 'dist/courses/italian/offline.js'))).toBe(false);
  });

  test('its styles hold within it alone', () => {
    const sheet =
      /href="\/club\/([^"]+hosted[^"]+\.css)"/.exec(
        page('courses/italian/the-main-line.html'),
      )?.[1] ?? '';
    const selectors: string[] = [];
    walk(parse(page(sheet)), {
      visit: 'Rule',
      enter({ prelude }) {
        if (this.atrule?.name === 'keyframes' || prelude.type !== 'SelectorList') return;
        selectors.push(...prelude.children.toArray().map((each) => generate(each)));
      },
    });
    expect(selectors.length).toBeGreaterThan(200);
    const bare = /^\.(?:board-(?:paper|tint|rule|coordinate|turn-\w+)|(?:white|black)-piece-\w+)$/;
    expect(selectors.filter((each) => !each.includes('.linewright') && !bare.test(each))).toEqual(
      [],
    );
  });
});

test('pages of the site list its chapters, and show boards, moves and exercises', () => {
  const own = page('index.html');
  expect(own).toContain('href="/club/courses/italian/the-main-line.html">The main line</a>');
  expect(own).toMatch(/<course-line fen="[^"]+" moves="e2e4 e7e5/);
  expect(own.match(/class="board-sprite"/g)).toHaveLength(2);
  const line = /"\/club\/([^"]+\/line\.\w+\.js)"/.exec(own)?.[1] ?? '';
  expect(page(line)).toMatch(/^\(function\(courseBoardWords,courseBoardLook\)/);
  for (const [, file = ''] of own.matchAll(/"\/club\/(_astro\/[^"]+)"/g)) {
    expect(existsSync(path.join(work, 'dist', file))).toBe(true);
  }
});
