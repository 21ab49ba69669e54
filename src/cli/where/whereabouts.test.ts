import { expect, test } from 'vitest';
import { nearestPositions } from '../../lookup/search/index.ts';
import { buildCourse, type Course, pathsInto } from '../../model/index.ts';
import { readCourse } from '../../read/index.ts';
import { assignAddresses } from '../../render/index.ts';
import { makeCourseTable } from '../../site/render/course-table.ts';
import { whereaboutsOf } from './whereabouts.ts';

const text = `# One

\`\`\`moves
1. d4 d5 2. c4 {:here[gambit]} e6 (2... c6 {:here[slav] :end[another course]}) 3. Nc3 Nf6 (3... h6?) 4. Bg5
\`\`\`

\`\`\`moves
1. Nf3 d5 2. d4 Nf6 3. c4 e6 4. Nc3 {:same[there]}
\`\`\`

\`\`\`moves
1. c4 e6 2. Nc3 d5 3. d4 Nf6 {:here[there]} 4. Bg5
\`\`\`

\`\`\`exercise at="gambit"
ask: Which?
answer: e6
\`\`\`
`;

function aboutOf(chapter: string, site?: string) {
  const course: Course = buildCourse(
    readCourse(
      {
        settings: { path: 'course.yaml', text: 'title: A\nid: a\nside: white\n' },
        chapters: [{ path: 'chapters/1-one.md', text: chapter }],
        games: [],
        media: [],
        problems: [],
      },
      { frontMatter: 'optional' },
    ),
  );
  return { course, table: makeCourseTable(course, assignAddresses(course)), site };
}

const about = aboutOf(text, 'https://club.example/course');
const keyOf = (name: string) => {
  const given = about.course.chapters[0]?.names.find((each) => each.name === name);
  return given?.position?.key ?? '';
};

test('a position stands at every place that shows it, exercises too', () => {
  const { places } = whereaboutsOf(about, keyOf('gambit'));
  expect(places.map(({ line, block, after, names }) => ({ line, block, after, names }))).toEqual([
    { line: 4, block: 'moves', after: '2.c4', names: ['gambit'] },
    { line: 15, block: 'exercise', after: '2.c4', names: [] },
  ]);
  expect(places[0]?.address).toBe('https://club.example/course/one.html#gambit');
  expect(places[1]?.address).toBe('https://club.example/course/one.html');
});

test('what the course plays there comes with its kind, and a line that ends with its reason', () => {
  const { moves, ends } = whereaboutsOf(about, keyOf('there'));
  expect(moves).toEqual([{ san: 'Bg5', name: '4.Bg5', kind: 'advice' }]);
  expect(ends).toBeUndefined();
  expect(whereaboutsOf(about, keyOf('gambit')).moves.map(({ name }) => name)).toEqual([
    '2...e6',
    '2...c6',
  ]);
  expect(whereaboutsOf(about, keyOf('slav')).ends).toBe('another course');
});

test('every way that leads there is told, the shortest first', () => {
  expect(whereaboutsOf(about, keyOf('there')).ways).toEqual([
    '1.d4 d5 2.c4 e6 3.Nc3 Nf6',
    '1.c4 e6 2.Nc3 d5 3.d4 Nf6',
  ]);
  expect(pathsInto(about.course, keyOf('there'), 1)).toMatchObject({ more: true });
  expect(pathsInto(about.course, keyOf('there'), 2)).toMatchObject({ more: false });
});

test('what repeats a position is on no way', () => {
  const round = aboutOf('```moves\n1. Nf3 Nf6 2. Ng1 Ng8 3. Nf3 Nf6 4. d4 {:here[end]}\n```\n');
  const end = round.course.chapters[0]?.names[0]?.position?.key ?? '';
  expect(whereaboutsOf(round, end).ways).toEqual(['1.Nf3 Nf6 4.d4']);
});

test('the nearest positions differ on the fewest squares, with the same side to move', () => {
  const afterE4 = 'rnbqkbnr/pppp1ppp/4p3/8/2PPP3/8/PP3PPP/RNBQKBNR b KQkq -';
  const near = nearestPositions(about.table, afterE4, { limit: 2, most: 6 });
  expect(near.map(({ squares }) => squares)).toEqual([6, 6]);
  expect(nearestPositions(about.table, afterE4, { limit: 2, most: 5 })).toEqual([]);
});
