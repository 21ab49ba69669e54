import { expect, test } from 'vitest';
import { applyFixes } from '../diagnostics/index.ts';
import { buildCourse } from '../model/index.ts';
import { readCourse } from '../read/index.ts';
import { addAnswer, addLine } from './index.ts';

/** A course whose settings say that its moves are written in German letters. */
function chapterIn(text: string) {
  const [chapter] = buildCourse(
    readCourse(
      {
        settings: { path: 'course.yaml', text: 'title: A\nside: both\npieces: de\n' },
        chapters: [{ path: 'chapters/1.md', text }],
        games: [],
        media: [],
        problems: [],
      },
      { frontMatter: 'optional' },
    ),
  ).chapters;
  const [block] = chapter?.blocks ?? [];
  if (!chapter || !block) throw new Error('a chapter with a block');
  return { chapter, block };
}

test('a line is written in the letters of the course', () => {
  const text = '```moves\n1. e4 e5 2. Sf3\n```\n';
  const { chapter, block } = chapterIn(text);
  const moves = [{ san: 'Nc6', variations: [[{ san: 'Nf6' }]] }, { san: 'Bb5' }];
  const edits = addLine({ text, chapter }, { block: block.key, node: 3 }, moves);
  expect(applyFixes(text, edits)).toBe(
    '```moves\n1. e4 e5 2. Sf3 2... Sc6 ( 2... Sf6 ) 3. Lb5\n```\n',
  );
});

test('and so is an answer', () => {
  const text = '```exercise after="1. e4 e5 2. Sf3"\nask: And now?\nanswer: Sc6\n```\n';
  const { chapter, block } = chapterIn(text);
  const edits = addAnswer({ text, chapter }, block.key, 'also', [{ san: 'Qf6' }]);
  expect(applyFixes(text, edits)).toContain('answer: Sc6\nalso: 2... Df6\n```');
});
