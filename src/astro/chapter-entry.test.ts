import { expect, test } from 'vitest';
import { courseOf } from '../model/testing/course-of.ts';
import { chapterEntries } from './chapter-entry.ts';
import { chapterSchema } from './chapter-schema.ts';

const course = courseOf({
  'chapters/1-open.md':
    '---\ntitle: Open\nsummary: In short.\n---\n\n## First\n\n```moves\n1. e4 e5 2. Nf3! {:here[knight "The knight"]} ( 2. Nc3 ) 2... Nc6 =\n```\n\n```diagram at="knight"\ncaption: Here.\n```\n',
  'chapters/2-more.md':
    '---\ntitle: More\n---\n\nSee [it](pos:knight).\n\n```exercise\nask: So?\nanswer: e4\n```\n',
});
const entries = chapterEntries(course, {
  chapter: (id) => `/club/${id}/`,
  file: (file) => `/club/${file}`,
});

test('chapters are entries whose data the schema takes as they are', () => {
  expect(entries.map(({ id, data }) => [id, data.order, data.title, data.exercises])).toEqual([
    ['open', 1, 'Open', 0],
    ['more', 2, 'More', 1],
  ]);
  for (const { data } of entries) expect(chapterSchema.parse(data)).toEqual(data);
});

test('positions lead to their chapters, and moves are a tree', () => {
  const [{ data } = {}] = entries;
  expect(data?.positions).toMatchObject([
    { label: 'knight', words: 'The knight', view: 'white', lastMove: { from: 'g1', to: 'f3' } },
  ]);
  expect(data?.positions[0]?.href).toMatch(/^\/club\/open\/#/);
  const [e4] = data?.lines[0]?.moves ?? [];
  expect(e4).toMatchObject({ san: 'e4', uci: 'e2e4', number: 1, color: 'white', nags: [] });
  const after = e4?.next[0]?.next;
  expect(after?.map(({ san, nags }) => [san, nags])).toEqual([
    ['Nf3', [1]],
    ['Nc3', []],
  ]);
});

test('the text needs no script, no style sheet and no other file', () => {
  const [open, more] = entries;
  expect(open?.headings).toMatchObject([{ depth: 2, text: 'First' }]);
  expect(open?.html).toContain('<svg xmlns');
  expect(open?.html).not.toMatch(/<(?:script|link|img)\b/);
  expect(more?.html).toMatch(/<a [^>]*href="\/club\/open\/#[^"]+"[^>]*>it<\/a>/);
});
