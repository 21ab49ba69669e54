import { toHtml } from 'hast-util-to-html';
import type { Root } from 'mdast';
import { toHast } from 'mdast-util-to-hast';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { VFile } from 'vfile';
import { expect, test, vi } from 'vitest';
import { type RemarkLinewrightOptions, remarkLinewright } from './index.ts';

async function show(text: string, options: RemarkLinewrightOptions = {}, path?: string) {
  const file = new VFile({ value: text, ...(path !== undefined && { path }) });
  const processor = unified()
    .use(remarkParse)
    .use(remarkLinewright, { side: 'white', ...options });
  const tree = await processor.run(processor.parse(file), file);
  return { file, html: toHtml(toHast(tree as Root)).replaceAll('\u00a0', ' ') };
}

const moves = (text: string, attributes = '') => `\`\`\`moves${attributes}\n${text}\n\`\`\`\n`;

test('the moves of a line stand out, those of variations do not', async () => {
  const { html } = await show(moves('1. e4 e5 ( 1... c5 2. Nf3 ) 2. Nf3 {said}'));
  const strong = [...html.matchAll(/<strong[^>]*>([^<]*)/g)].map(([, move]) => move);
  expect(strong).toEqual(['1. e4', 'e5', '2. Nf3']);
  expect(html).toContain('c5');
});

test.each([
  ['a move that cannot be played', moves('1. e4 e5 2. Ke3 Nc6 {a comment}'), '1. e4 e5 2. Ke3 Nc6'],
  ['a start that nobody knows', moves('3. Bb5 a6', ' from="nowhere"'), '3. Bb5 a6'],
  ['a position that nobody knows', '```diagram at="nowhere"\ncaption: Here.\n```\n', 'Here.'],
])('nothing is lost behind %s', async (_, text, words) => {
  const { file, html } = await show(text);
  expect(html).toContain(words);
  expect(html).not.toContain('<div></div>');
  expect(file.messages.some(({ fatal }) => fatal)).toBe(true);
});

test('a message leads to its rule where the handbook is published', async () => {
  const text = moves('1. e4 e5 2. Ke3');
  const urlOf = async (options?: RemarkLinewrightOptions) =>
    (await show(text, options)).file.messages[0]?.url;
  expect(await urlOf()).toBeUndefined();
  const address = /^https:\/\/example\.org\/book\/rules\.html#[a-z-]+$/;
  expect(await urlOf({ handbook: 'https://example.org/book' })).toMatch(address);
  vi.stubEnv('LINEWRIGHT_HANDBOOK', 'https://example.org/book/index.html');
  expect(await urlOf()).toMatch(address);
  await expect(show(text, { fail: true })).rejects.toThrow('https://example.org/book/rules.html#');
  vi.unstubAllEnvs();
});

const chapters = [
  {
    path: 'chapters/1.md',
    text: `---\ntitle: One\nid: first\n---\n\n${moves('1. e4 e5 2. Nf3 {:here[knight "The knight"]}')}`,
  },
  {
    path: 'chapters/2.md',
    text: `---\ntitle: Two\n---\n\n${moves('2... Nc6 3. Bb5', ' from="knight"')}\nSee [it](pos:knight) and [one](1.md).\n`,
  },
];
const [, second] = chapters;
const whole = second?.text ?? '';

test.each([
  ['by its path', whole, '/home/a/chapters/2.md'],
  [
    'by its text, of which the front matter was taken',
    whole.slice(whole.indexOf('```')),
    undefined,
  ],
])('a file that is known %s uses names of other chapters', async (_, text, path) => {
  const { file, html } = await show(text, { chapters }, path);
  expect(file.messages.map(String)).toEqual([]);
  expect(html).toMatch(/<strong[^>]*>2\.\.\. Nc6<\/strong>/);
  expect(html).toContain('href="first.html#knight">it</a>');
  expect(html).toContain('<a href="first.html">one</a>');
  expect(file.data.linewright?.title).toBe('Two');
});

test('a page of another chapter stands where the generator puts it', async () => {
  const pageAddress = ({ id, path }: { id: string; path: string }) => `/course/${id}/?${path}`;
  const { html } = await show(whole, { chapters, pageAddress }, 'chapters/2.md');
  expect(html).toContain('href="/course/first/?chapters/1.md#knight"');
});

test('an error stops the pipeline only where that is asked for', async () => {
  const text = `# One\n\n${moves('1. e4 e5 2. Ke3')}`;
  await expect(show(text)).resolves.toBeDefined();
  await expect(show(text, { fail: true })).rejects.toThrow('2.Ke3 cannot be played');
  await expect(show(text, { fail: true })).rejects.toMatchObject({
    ruleId: 'move-illegal',
    line: 4,
    column: 13,
  });
  await expect(show(moves('1. e4 e5 2. Nf3'), { fail: true })).resolves.toBeDefined();
});
