import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { courseOf } from '../model/testing/course-of.ts';
import type { ComponentName, ComponentProps } from './component-source.ts';
import { renderComponent } from './render-component.ts';

const sources = mkdtempSync(path.join(tmpdir(), 'linewright-components-'));
afterAll(() => rmSync(sources, { recursive: true, force: true }));

const course = courseOf({
  'chapters/1.md':
    '---\ntitle: One\n---\n\n```moves\n1. e4 e5 2. Nf3 {:here[knight "The knight"] :plan[f3-e5]} Nc6 3. Bb5 =\n```\n',
});
const site = {
  sources,
  courses: [{ names: ['courses/one', 'my-course'], root: '/courses/one/', course }],
  language: 'en',
  sheet: '/a/hosted.css',
  script: '/a/course.js',
  line: '/a/line.js',
  solver: '/a/exercise.js',
};
const render = (name: ComponentName, props: ComponentProps, isFirst = true) =>
  renderComponent(name, props, site, isFirst);

test('a board plays the main line, from where its moves begin', () => {
  const html = render('Board', {
    after: '1. e4 e5',
    moves: '2. Nf3 (2. Nc3) 2... Nc6',
    view: 'black',
  });
  expect(html).toContain('moves="e2e4 e7e5 g1f3 b8c6" sans="e4 e5 Nf3 Nc6" at="2"');
  expect(html).toContain('view="black"');
  expect(render('Board', { moves: '1. e4 e5', show: 'end' })).toContain('at="2"');
});

test('a named position has the line of the course, and leads there', () => {
  const html = render('Board', { at: 'knight', course: './my-course' });
  expect(html).toContain('plan="f3-e5"');
  expect(html).toMatch(/href="\/courses\/one\/1\.html#/);
  const diagram = render('Diagram', { at: 'knight' });
  expect(diagram).toContain('<svg class="board"');
  expect(diagram, 'no picture is made of it').not.toContain('images/');
});

test('moves as text lead to their own lines, and have no ids that a page may have twice', () => {
  const html = render('Moves', { moves: '1. d4 d5 ( 1... f5 2. g3 ) 2. c4' });
  expect(html.match(/data-line-moves="[^"]*"/g)).toEqual([
    'data-line-moves="d2d4 d7d5 c2c4"',
    'data-line-moves="d2d4 d7d5 c2c4"',
    'data-line-moves="d2d4 f7f5 g2g3"',
    'data-line-moves="d2d4 f7f5 g2g3"',
    'data-line-moves="d2d4 d7d5 c2c4"',
  ]);
  expect(html.match(/data-line-at="\d"/g)?.join('')).toBe(
    [1, 2, 2, 3, 3].map((at) => `data-line-at="${at}"`).join(''),
  );
  expect(html.replace(/<svg class="board-sprite".*?<\/svg>/gs, '')).not.toMatch(/ id="/);
});

test('an exercise has its solver, and the pieces stand in a page once', () => {
  const html = render('Exercise', { after: '1. e4 e5', ask: 'Which "knight"?', answer: 'Nf3' });
  expect(html).toContain('data-solver="/a/exercise.js"');
  expect(html).toContain('board-sprite');
  expect(render('Diagram', {}, false)).not.toContain('board-sprite');
});

test.each<[string, ComponentName, ComponentProps, RegExp, string]>([
  [
    'a move that cannot be played',
    'Moves',
    { moves: '1. e4 e5 2. Ke3' },
    /2\.Ke3 cannot be played/,
    'Ke3',
  ],
  ['one that leads to the position', 'Board', { after: '1. e4 Ke6' }, /1\.\.\.Ke6 cannot/, 'Ke6'],
  ['a FEN that is none', 'Diagram', { fen: 'x w - - 0 1' }, /FEN/, 'x w'],
  ['a name that there is not', 'Diagram', { at: 'kniht' }, /no position named `kniht`/, 'kniht'],
  [
    'a course that there is not',
    'Board',
    { at: 'knight', course: 'two' },
    /no course `two`/,
    'two',
  ],
  ['a property that there is not', 'Board', { mvoes: '1. e4' }, /no property `mvoes`/, '<Board'],
  [
    'an answer that cannot be played',
    'Exercise',
    { ask: 'So?', answer: 'Ke3' },
    /Ke3 cannot/,
    'Ke3',
  ],
  ['a position beyond the moves', 'Board', { moves: '1. e4', show: 3 }, /`show` is 3/, '<Board'],
])('%s stops the site with its place', (_, name, props, message, at) => {
  const written = Object.entries(props).map(([key, value]) => `${key}="${value}"`);
  const page = `---\nimport { ${name} } from 'linewright/astro/components';\n---\n\n<${name} ${written.join(' ')} />\n`;
  writeFileSync(path.join(sources, 'page.astro'), page);
  let error: unknown;
  try {
    render(name, props);
  } catch (thrown) {
    error = thrown;
  }
  expect(error).toMatchObject({ message: expect.stringMatching(message) });
  const line = page.split('\n')[4] ?? '';
  const { loc } = error as { loc: { file: string; line: number; column: number } };
  expect(loc).toMatchObject({ file: path.join(sources, 'page.astro'), line: 5 });
  // Of an answer only the property is known.
  const column = name === 'Exercise' ? line.indexOf('Ke3') : line.indexOf(at);
  expect(loc.column).toBe(column + 1);
});
