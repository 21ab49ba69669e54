import { expect, test } from 'vitest';
import { courseOf } from '../model/testing/course-of.ts';
import { chapterDocument, contextOf, type Medium, resolve, type Target } from './index.ts';

const text =
  '## Here\n\n[There](2.md#there), [that](pos:name), `1.e4` and [the web](https://example.org).[^1]\n\n' +
  '[^1]: A note.\n\n```moves\n1. e4 {:here[name]} e5 (1... c5) 2. Nf3 ⩲\n```\n\n' +
  '```diagram at="name"\ncaption: One.\n```\n\n' +
  '```exercise at="name"\nask: Which?\nanswer: 1... e5\n```\n\n' +
  '```pattern\ntitle: A pawn\nwhite: e4\n```\n\n<b>HTML</b>\n';

const course = courseOf({ 'chapters/1.md': text, 'chapters/2.md': '# 2\n\n## There\n\nWords.' });
const [chapter] = course.chapters;
if (chapter === undefined) throw new Error('no chapter');
const context = { ...contextOf(course), chapter };

/** A medium that notes what it is asked for. */
function medium(more: Partial<Medium>): { medium: Medium; targets: Target[]; boards: string[] } {
  const targets: Target[] = [];
  const boards: string[] = [];
  const noted: Medium = {
    isLive: false,
    board({ placement }) {
      boards.push(placement);
      return { type: 'text', value: 'board' };
    },
    addressOf(target) {
      targets.push(target);
      return `to:${target.to}`;
    },
    ...more,
  };
  return { medium: noted, targets, boards };
}

test('a chapter becomes a document once, and no medium changes it', () => {
  const document = chapterDocument(context);
  const before = structuredClone(document);
  for (const isLive of [true, false]) {
    resolve(document, medium({ isLive, showsLastBoards: !isLive }).medium, context.strings);
  }
  expect(chapterDocument(context)).toBe(document);
  expect(document).toEqual(before);
  // Plain data: it can be kept on a disk.
  expect(JSON.parse(JSON.stringify(document))).toEqual(document);
});

test('every link is a reference, and a medium makes all addresses', () => {
  const { medium: still, targets } = medium({});
  resolve(chapterDocument(context), still, context.strings);
  const kinds = new Set(targets.map(({ to }) => to));
  expect([...kinds].sort()).toEqual(['chapter', 'note', 'picture', 'place', 'web']);
  expect(targets).toContainEqual({ to: 'chapter', chapter: 'chapters/2.md', id: 'there' });
  const addresses = [...JSON.stringify(chapterDocument(context)).matchAll(/"href":"([^"]*)"/g)];
  expect(addresses).toEqual([]);
});

test('a medium without an address for a target shows the words', () => {
  const { medium: silent } = medium({ addressOf: () => undefined });
  const shown = JSON.stringify(resolve(chapterDocument(context), silent, context.strings));
  expect(shown).not.toContain('"tagName":"a"');
  expect(shown).toContain('There');
});

test('boards are positions until a medium draws them, beside the author’s HTML too', () => {
  const { medium: still, boards } = medium({ showsLastBoards: true });
  resolve(chapterDocument(context), still, context.strings);
  // Of the end of the moves, the diagram, the exercise and the pattern.
  expect(boards).toHaveLength(4);
});
