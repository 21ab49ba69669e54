import { expect, test } from 'vitest';
import { checkCourse } from '../check/index.ts';
import { buildCourse } from '../model/index.ts';
import { readCourse } from '../read/index.ts';
import { findJudgementsToAsk } from './find-judgements-to-ask.ts';

const news = (date: string) => ({
  path: `news/${date}.md`,
  text: `---\ntitle: News\ndate: ${date}\n---\n`,
});

function courseOf(chapter: string, published?: string) {
  return buildCourse(
    readCourse(
      {
        settings: { path: 'course.yaml', text: 'title: Test\nid: test\nside: white\n' },
        chapters: [{ path: 'chapters/1.md', text: `---\ntitle: A\n---\n\n${chapter}` }],
        games: [],
        media: [],
        news: published === undefined ? [] : [news(published)],
        problems: [],
      },
      { frontMatter: 'required' },
    ),
  );
}

function asked(before: string, after: string, published?: string): string[] {
  const { checked } = checkCourse(courseOf(after, published));
  if (!checked) throw new Error('the new edition is not sound');
  return findJudgementsToAsk(courseOf(before, published), checked).map(
    ({ judgement, why }) => `${judgement.text} ${why}`,
  );
}

const block = (judgement: string, end = '3. Bb5 a6 4. Ba4') =>
  `\`\`\`moves\n1. e4 e5 2. Nf3 Nc6 {:judge[${judgement}]} ${end}\n\`\`\`\n`;

test('one that has stood since the edition before, with no date', () => {
  expect(asked(block('Good.'), block('Good.'))).toEqual(['Good. old']);
});

test('not one that is new, or was written anew', () => {
  expect(asked(block('Good.'), block('Better.'))).toEqual([]);
  expect(asked(block('2025-01-01 Good.'), block('2025-02-01 Good.'))).toEqual([]);
});

test('by its date, where the edition before has one', () => {
  const after = block('2025-01-31 Good.');
  expect(asked(after, after, '2025-01-01')).toEqual([]);
  expect(asked(after, after, '2025-02-01')).toEqual(['Good. old']);
});

test('where other moves, other advice or another assessment follow, however far on', () => {
  const dated = '2025-01-31 Good.';
  const before = block(dated);
  const change = (end: string) => asked(before, block(dated, end), '2025-01-01');
  expect(change('3. Bb5 a6 4. Ba4 {A word more changes nothing.}')).toEqual([]);
  expect(change('3. Bb5 a6 4. Bxc6')).toEqual(['Good. lines']);
  expect(change('3. Bb5 a6 4. Ba4 =')).toEqual(['Good. lines']);
  expect(change('3. Bb5 a6 ( 3... Nf6 4. O-O ) 4. Ba4')).toEqual(['Good. lines']);
});

test('not where only lines before it, or beside it, changed', () => {
  const dated = '2025-01-31 Good.';
  const other = '\n```moves fen="4k3/8/8/8/8/8/4P3/4K3 w - - 0 1"\n1. e4\n```\n';
  expect(asked(block(dated), block(dated) + other, '2025-01-01')).toEqual([]);
});
