import { expect, test } from 'vitest';
import { readableText, renderCourse } from '../site/render/testing/render-course.ts';

const pawns = (attributes = '') =>
  `\`\`\`pattern\ntitle: Pawn on e4\nwhite: e4\nblack: e5\nempty: d4\n${attributes}\`\`\`\n`;

function pattern(page = ''): string {
  return readableText(page.slice(page.indexOf('<figure class="pattern"')));
}

test('a pattern lists the positions that have it, by name where they have one', () => {
  const [page] = renderCourse([
    `\`\`\`moves\n1. e4 e5 2. Nf3 Nc6 {:here[open]} 3. d4\n\`\`\`\n\n${pawns()}`,
  ]);
  expect(pattern(page)).toBe(
    [
      'Pawn on e4',
      'Bracketed squares are empty; other pieces may stand anywhere.',
      'In 3 positions of the course',
      'In this chapter, after',
      '1...e5',
      '2.Nf3',
      'open 2...Nc6',
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
    'In this chapter, after',
    '1...e5',
    'In “Chapter C”, after',
    '2.Nc3',
  ]);
});

test('with the colours exchanged is told apart', () => {
  const text = `\`\`\`moves\n1. d4 d5 2. c4 e6\n\`\`\`\n\n\`\`\`pattern\ntitle: c4\nwhite: d4 c4\nblack: d5\nreversed: true\n\`\`\`\n`;
  const slav = '```moves fen="4k3/8/8/2pp4/3P4/8/8/4K3 w - - 0 1"\n1. Ke2\n```\n';
  const [page] = renderCourse([`${text}\n${slav}`]);
  const [plain = '', reversed = ''] = pattern(page).split('With colours reversed');
  expect(plain.trim().split('\n').slice(-2)).toEqual(['2.c4', '2...e6']);
  expect(reversed.trim().split('\n').slice(0, 3)).toEqual([
    'In this chapter, after',
    'at the start',
    '1.Ke2',
  ]);
});

test('a long list is folded', () => {
  const quiet = 'Nf3 Nf6 Ng1 Ng8 Nh3 Nh6 Nf4 Nf5 Nh5 Nh4 Ng3 Ng6 Nf5 Nf4 a3 a6 b3 b6 h3 h6'.split(
    ' ',
  );
  const moves = quiet.map((san, ply) => (ply % 2 === 0 ? `${ply / 2 + 2}. ${san}` : san)).join(' ');
  const [page = ''] = renderCourse([`\`\`\`moves\n1. e4 e5 ${moves}\n\`\`\`\n\n${pawns()}`]);
  expect(page).toMatch(/<details><summary>\d+ more<\/summary>/);
  const items = page.slice(page.indexOf('class="pattern"')).match(/<li>/g) ?? [];
  expect(pattern(page)).toContain(`In ${items.length} positions`);
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
