import { expect, test } from 'vitest';
import { buildCourse } from '../../model/index.ts';
import { readCourse } from '../../read/index.ts';
import { renderSite } from './site.ts';
import { shownOn } from './testing/shown-on.ts';

function positionsOf(side: string, ...texts: readonly string[]) {
  const draft = readCourse(
    {
      settings: { path: 'course.yaml', text: `title: Test\nid: test\nside: ${side}\n` },
      chapters: texts.map((text, index) => ({
        path: `chapters/${index + 1}.md`,
        text: `---\ntitle: Chapter ${index + 1}\n---\n\n${text}`,
      })),
      games: [],
      media: [],
      problems: [],
    },
    { frontMatter: 'optional' },
  );
  const site = renderSite(buildCourse(draft), {
    assets: { scripts: {}, styles: {}, fonts: [] },
    offline: false,
  });
  const [page] = shownOn(site, 'positions');
  if (page === undefined) throw new Error('there is no page of positions');
  return page;
}

test('named positions are boards with titles, from the course’s side, with what practice asks there', () => {
  const { positions } = positionsOf(
    'black',
    '```moves\n1. e4 {:here[king "King’s pawn"]} e5 {:here[open]} 2. Nf3 {:here[last]}\n```\n',
  );
  const [{ chapter, plates } = { chapter: '', plates: [] }] = positions;
  expect(chapter).toBe('Chapter 1');
  expect(plates.map(({ title, words, view }) => [title, words, view])).toEqual([
    ['King’s pawn', 'after 1.e4', 'black'],
    [undefined, 'after 1...e5', 'black'],
    [undefined, 'after 2.Nf3', 'black'],
  ]);
  const after1e4 = 'rnbqkbnr/pppppppp/8/8/4P3/8/PPPP1PPP/RNBQKBNR b KQkq -';
  // The move from the position; else the one that led to it; else nothing.
  expect(plates.map(({ asked }) => asked)).toEqual([
    { key: after1e4, advice: ['e5'] },
    { key: after1e4, advice: ['e5'] },
    undefined,
  ]);
  expect(plates[0]?.board).toContain('data-view="black"');
  expect(plates[0]?.board?.match(/<use data-square/g)).toHaveLength(32);
});

test('positions in which orders of moves meet have a board and their ways', () => {
  const { transpositions } = positionsOf(
    'white',
    '```moves\n1. d4 Nf6 2. c4 e6 {:here[meet "Where two roads meet"]}\n```\n',
    '```moves\n1. d4 e6 2. c4 Nf6 {:same[meet]}\n```\n',
  );
  expect(
    transpositions.map(({ plate, after, ways }) => [plate.title, plate.words, after, ways.length]),
  ).toEqual([['Where two roads meet', 'after 2...e6', '1.d4', 2]]);
  expect(transpositions[0]?.ways.map(({ moves, chapter }) => [moves, chapter])).toEqual([
    ['1...Nf6 2.c4 e6', 'Chapter 1'],
    ['1...e6 2.c4 Nf6', 'Chapter 2'],
  ]);
});

test('of very many boards the page holds the first; the others are drawn in the browser', () => {
  const shuffle = ['Nf3 Nf6 Ng1 Ng8', 'Nc3 Nc6 Nb1 Nb8', 'Nh3 Nh6 Ng1 Ng8', 'Na3 Na6 Nb1 Nb8'];
  const sans = Array.from(
    { length: 80 },
    (_, index) => shuffle[index % 4]?.split(' ') ?? [],
  ).flat();
  const moves = sans.map((san, ply) => `${san} {:here[n${ply}]}`).join(' ');
  const { positions } = positionsOf('both', `\`\`\`moves\n${moves}\n\`\`\`\n`);
  const plates = positions.flatMap((group) => group.plates);
  expect(plates).toHaveLength(320);
  expect(plates.filter(({ board }) => board !== undefined)).toHaveLength(300);
  expect(plates.at(-1)).toMatchObject({
    late: {
      placement: 'rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR',
      lastMove: { from: 'a6', to: 'b8' },
    },
    view: 'white',
  });
});
