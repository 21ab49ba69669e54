import { expect, test } from 'vitest';
import { readableText, renderCourse } from '../../site/render/testing/render-course.ts';

const pawns = (attributes = '') =>
  `\`\`\`pattern\ntitle: Pawn on e4\nwhite: e4\nblack: e5\nempty: d4\n${attributes}\`\`\`\n`;

function pattern(page = ''): string {
  return readableText(page.slice(page.indexOf('<figure class="pattern"')));
}

test('a pattern lists the positions that have it: runs as one place, titles as their own', () => {
  const [page] = renderCourse([
    `\`\`\`moves\n1. e4 e5 2. Nf3 Nc6 {:here[open "Both open games"]} 3. Bc4 ( 3. Bb5 {:here[own]} ) 3... Bc5\n\`\`\`\n\n${pawns()}`,
  ]);
  expect(pattern(page)).toBe(
    [
      'Pawn on e4',
      'Bracketed squares are empty; other pieces may stand anywhere.',
      'In 6 positions of the course',
      'In this chapter:',
      'from 1...e5 to 2.Nf3',
      'Both open games, from 2...Nc6 to 3...Bc5',
      'after 3.Bb5',
    ].join('\n'),
  );
  expect(page).toContain('aria-label="Pawn on e4. White: pawn e4. Black: pawn e5. Empty: d4."');
});

test('a position is told once, in the reader’s own chapter if it stands there', () => {
  const moves = '```moves\n1. e4 e5\n```\n';
  const [one, two] = renderCourse([
    moves,
    `${moves}\n${pawns()}`,
    '```moves\n1. e4 e5 2. Nc3\n```\n',
  ]);
  expect(one).not.toContain('pattern');
  expect(pattern(two).split('\n').slice(2)).toEqual([
    'In 2 positions of the course',
    'In this chapter:',
    'after 1...e5',
    'In “Chapter C”:',
    'after 2.Nc3',
  ]);
});

test('with the colours exchanged is told apart', () => {
  const text = `\`\`\`moves\n1. d4 d5 2. c4 e6\n\`\`\`\n\n\`\`\`pattern\ntitle: c4\nwhite: d4 c4\nblack: d5\nreversed: true\n\`\`\`\n`;
  const slav = '```moves fen="4k3/8/8/2pp4/3P4/8/8/4K3 w - - 0 1"\n1. Ke2\n```\n';
  const [page] = renderCourse([`${text}\n${slav}`]);
  const [plain = '', reversed = ''] = pattern(page).split('With colours reversed');
  expect(plain.trim().split('\n').slice(-2)).toEqual(['In this chapter:', 'from 2.c4 to 2...e6']);
  expect(reversed.trim().split('\n').slice(0, 3)).toEqual([
    'In this chapter:',
    'at the start',
    'after 1.Ke2',
  ]);
});

test('a long list is folded, and says how many positions are in the fold', () => {
  const replies = ['Nc6', 'Nf6', 'a6', 'a5', 'b6', 'c6', 'd6', 'f6', 'g6', 'h6', 'h5', 'Nh6'];
  const branches = replies.map((san) => `( 2... ${san} 3. h3 )`).join(' ');
  const [page = ''] = renderCourse([
    `\`\`\`moves\n1. e4 e5 2. Nf3 Bc5 ${branches}\n\`\`\`\n\n${pawns()}`,
  ]);
  const [shown = '', folded = ''] = page.slice(page.indexOf('class="pattern"')).split('<details>');
  expect(shown.match(/<li>/g)).toHaveLength(8);
  expect(folded.match(/<li>/g)).toHaveLength(5);
  expect(folded).toContain('<summary>10 more</summary>');
  expect(pattern(page)).toContain('In 27 positions');
});

test('what holds wherever a pattern stands: its text, its advice, its claims and where they do not hold', () => {
  const moves = '```moves\n1. e4 e5 2. Nf3 Nc6 {:here[open]} 3. d4\n```\n';
  const says = [
    'text: "Take *space* while you can: :judge[2025-11-01 the centre is worth a tempo.]"',
    'advice: [d4, Bc4]',
    'claim:',
    '  - not passed e4 and attacks e4 d5 f5',
    '  - legal Bb5',
    'except: open',
  ].join('\n');
  const [page = ''] = renderCourse([`${moves}\n${pawns(`${says}\n`)}`]);
  expect(pattern(page).split('\n').slice(2, 6)).toEqual([
    'Take space while you can: the centre is worth a tempo.',
    'Advised: d4 or Bc4',
    'True in each of these positions: the pawn on e4 is not passed; e4 attacks d5 and f5; legal Bb5',
    'Except after 2...Nc6',
  ]);
  expect(page).toContain('<code>legal Bb5</code>');
});
