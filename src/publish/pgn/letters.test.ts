import { expect, test } from 'vitest';
import type { CheckedCourse } from '../../check/index.ts';
import { buildCourse } from '../../model/index.ts';
import { readCourse, writeLetters } from '../../read/index.ts';
import { makePgnWithDirectives } from './index.ts';

const english = `---
title: One
---

Play \`2.Nf3\`.

\`\`\`moves
1. e4 e5 2. Nf3 {Now \`2...Nc6\`. :claim[legal Nc6]} Nc6 3. Bb5 ( 3. Bc4 )
\`\`\`

\`\`\`exercise after="1. e4 e5 2. Nf3 Nc6"
ask: And now?
answer: 3. Bb5 Nf6
before: Nd4
\`\`\`
`;

function pgnOf(text: string, settings: string): string {
  const files = {
    settings: { path: 'course.yaml', text: settings },
    chapters: [{ path: 'chapters/1.md', text }],
    games: [],
    media: [],
    problems: [],
  };
  const checked = { course: buildCourse(readCourse(files)) } as CheckedCourse;
  return makePgnWithDirectives(checked, {
    textOf: (file) => (file === 'course.yaml' ? settings : text),
  });
}

// PGN standard, 8.2.3.2: the letters of exported games are English.
test('PGN of a course in other letters is that of the course in English ones', () => {
  const settings = 'title: A course\nid: a\nside: both\n';
  const german = writeLetters({ path: 'chapters/1.md', text: english }, 'en', 'de');
  expect(german).toContain('2. Sf3 {Now `2...Sc6`. :claim[legal Sc6]} Sc6 3. Lb5 ( 3. Lc4 )');
  expect(pgnOf(german, `${settings}pieces: de\n`)).toBe(pgnOf(english, settings));
});
