import { expect, test } from 'vitest';
import { courseOf } from '../model/testing/course-of.ts';
import { assignAddresses, chapterDocument, contextOf, pageMedium, resolve } from './index.ts';
import { writeHtml } from './medium/write-html.ts';

function documentOf(text: string) {
  const course = courseOf({ 'chapters/1.md': `# One\n\n${text}\n`, 'media/a.png': '' });
  const [chapter] = course.chapters;
  if (chapter === undefined) throw new Error('no chapter');
  const context = { ...contextOf(course), chapter };
  const page = pageMedium(assignAddresses(course), chapter.file);
  return { document: chapterDocument(context), page, strings: context.strings };
}

const moves = '```moves\n1. e4 {:here[name]} e5 {Both *sides*.}\n```';

test('text that is written once is what each medium would make of it', () => {
  const plain =
    'Words & *more*.\n\n- One\n- `two` < 3\n\n> A **quote**\n> of lines.\n\n3. Three\n\n---';
  const mixed = `${plain}\n\nAfter 1.e4 [there](pos:name), 2.Nf3.\n\n## Then\n\n${moves}\n\n${plain}`;
  const { document, page, strings } = documentOf(mixed);
  expect(document.children.filter(({ type }) => type === 'fixed')).toHaveLength(2);
  for (const medium of [page, { ...page, isLive: false, drawsSigns: true }]) {
    const written = resolve(document, { ...medium, isWritten: true }, strings);
    const resolved = resolve(document, medium, strings);
    expect(writeHtml(written.children)).toBe(writeHtml(resolved.children));
    expect(JSON.stringify(resolved)).not.toContain('"fixed"');
    expect(written.children.some(({ type }) => type === 'raw')).toBe(true);
  }
});

test.each([
  ['words', 'Words *in* `a` row.', true],
  ['a list', '- One\n- Two', true],
  ['a link', 'To [the web](https://example.org).', false],
  ['a link in a list', '- One\n- [Two](https://example.org)', false],
  ['a move with a figurine', 'The knight goes to Nf3.', false],
  ['castling, which paper keeps on one line', 'White plays O-O soon.', false],
  ['a picture', '![A board](../media/a.png)', false],
  ['a heading, which has an id', '## Then', false],
  ['a table, which is a part of its own', '| a |\n| - |\n| b |', false],
])('%s', (_name, text, isFixed) => {
  const { document } = documentOf(text);
  expect(document.children.some(({ type }) => type === 'fixed')).toBe(isFixed);
});
