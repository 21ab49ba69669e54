import { expect, test } from 'vitest';
import { courseOf } from '../testing/course-of.ts';
import { practisedIn } from './practised.ts';

const moves = (text: string, info = '') => `\`\`\`moves${info}\n${text}\n\`\`\`\n`;

/** The moves that practice asks of a course for White, in SAN, by the alphabet. */
function asked(files: Parameters<typeof courseOf>[0], begins?: string): string[] {
  const course = courseOf(files, 'white');
  const settings = begins === undefined ? course.settings : { ...course.settings, begins };
  const { asked } = practisedIn({ ...course, settings });
  const sans = Object.values(course.graph).flatMap(({ key, moves }) =>
    asked.has(key) ? (moves[0]?.san ?? []) : [],
  );
  return sans.sort();
}

const line =
  '1. e4 e5 ( 1... c5 2. Nf3 d6 3. d4 ) 2. Nf3 Nc6 ( 2... d6 3. d4 exd4 4. Nxd4 ) 3. Bb5';

test('all advice, unless the author says otherwise', () => {
  expect(asked(moves(line))).toEqual(['Bb5', 'Nf3', 'Nf3', 'Nxd4', 'd4', 'd4', 'e4']);
});

test('of a block: its main line, or nothing', () => {
  expect(asked(moves(line, ' learn="main"'))).toEqual(['Bb5', 'Nf3', 'e4']);
  expect(asked(moves(line, ' learn="none"'))).toEqual([]);
});

test('of a chapter, and of a block that says otherwise', () => {
  const chapter = (learn: string, info = '') => ({
    'chapters/1.md': `---\ntitle: One\nlearn: ${learn}\n---\n\n${moves(line, info)}`,
  });
  expect(asked(chapter('none'))).toEqual([]);
  expect(asked(chapter('none', ' learn="main"'))).toEqual(['Bb5', 'Nf3', 'e4']);
});

test('from a move on: that move and what follows it', () => {
  const text = line
    .replace('2. Nf3 d6', '2. Nf3 {:learn[none]} d6')
    .replace('exd4', 'exd4 {:learn[none]}');
  expect(asked(moves(text))).toEqual(['Bb5', 'Nf3', 'd4', 'e4']);
  expect(asked(moves(line.replace('3. d4 )', '3. d4 {:learn[all]} )'), ' learn="none"'))).toEqual([
    'd4',
  ]);
});

test('the main line from a move on is that of its variation', () => {
  const text = '1. e4 e5 ( 1... c5 {:learn[main]} 2. Nf3 d6 ( 2... e6 3. d4 ) 3. d4 ) 2. Nf3';
  expect(asked(moves(text))).toEqual(['Nf3', 'Nf3', 'd4', 'e4']);
});

test('in prose it speaks of the last move shown', () => {
  expect(asked(`${moves(line)}\nThat move is only for those who like it. :learn[none]\n`)).toEqual([
    'Nf3',
    'Nf3',
    'Nxd4',
    'd4',
    'd4',
    'e4',
  ]);
});

test('a block goes on as what it starts from', () => {
  const first = moves('1. e4 e5 2. Nf3 Nc6 {:here[knights] :learn[none]}');
  const next = (info = '') => moves('3. Bb5', ` from="knights"${info}`);
  expect(asked(first + next())).toEqual(['Nf3', 'e4']);
  expect(asked(first + next(' learn="all"'))).toEqual(['Bb5', 'Nf3', 'e4']);
});

test('a position is asked if one of its places asks it', () => {
  expect(asked(moves(line, ' learn="none"') + moves('1. e4 e5 2. Nf3'))).toEqual(['Nf3', 'e4']);
});

test('nothing at or behind an option, and nothing of what comes before the subject', () => {
  expect(asked(moves('1. e4 e5 2. Bc4 {:option[]} Nf6 3. d3'))).toEqual(['e4']);
  const named = line.replace('Nc6', 'Nc6 {:here[subject]}');
  expect(asked(moves(named), 'subject')).toEqual(['Bb5', 'Nf3', 'Nxd4', 'd4', 'd4']);
});

test('lines keep away from positions that stand only in options, mistakes and references', () => {
  const course = courseOf(
    moves('1. e4 ( 1. d4 {:option[]} d5 ) e5 2. Nf3 ( 2. Qh5? Nc6 ) Nc6') +
      moves('1. e4 e6 2. d4', ' learn="none"'),
    'white',
  );
  const { aside } = practisedIn(course);
  const last = Object.values(course.graph).flatMap(({ moves }) =>
    moves.flatMap(({ san, to }) => (aside.has(to) ? san : [])),
  );
  expect(last.sort()).toEqual(['Nc6', 'Qh5', 'd4', 'd4', 'd5', 'e6']);
});
