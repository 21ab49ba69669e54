/** The handbook's description of JSON output (`scripts/handbook/json-outputs.ts`) against what commands print. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, afterEach, beforeEach, expect, test, vi } from 'vitest';
import { jsonOutputs } from '../scripts/handbook/json-outputs.ts';
import { changes } from '../src/cli/changes.ts';
import { check } from '../src/cli/check/check.ts';
import { compare } from '../src/cli/compare/compare.ts';
import { gaps } from '../src/cli/gaps/gaps.ts';
import { importPgn } from '../src/cli/import/import.ts';
import { program } from '../src/cli/program.ts';
import { where } from '../src/cli/where/where.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-json-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));

let printed = '';
beforeEach(() => {
  printed = '';
  vi.spyOn(process.stderr, 'write').mockReturnValue(true);
  vi.spyOn(process.stdout, 'write').mockImplementation((chunk) => {
    printed += String(chunk);
    return true;
  });
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllEnvs();
});

function write(name: string, files: Readonly<Record<string, string>>): string {
  const folder = path.join(work, name);
  for (const [file, content] of Object.entries(files)) {
    mkdirSync(path.dirname(path.join(folder, file)), { recursive: true });
    writeFileSync(path.join(folder, file), content);
  }
  return folder;
}

const chapter = (text: string, id = 'one') => `---\ntitle: ${id}\nid: ${id}\n---\n\n${text}\n`;
const settings = 'title: A\nside: white\nid: a-course-of-tests\n';

const faulty = write('faulty', {
  'course.yaml': settings,
  'chapters/1.md': chapter('```moves\n1. e4 e5 2. Nf3 Nc6 4. Bb5+ a6 5. Ba4 Nf6 6. Kxe1\n```'),
  'chapters/2.md': chapter('```moves\n1. e4 e5 2. Nf3 Nc6 3. d4 exd4 4. Nxd4\n```', 'two'),
});
const now = write('now', {
  'course.yaml': settings,
  'chapters/1.md': chapter(
    `\`\`\`moves
1. e4 e5 2. Nf3 Nc6 ( 2... d6 3. d4 {:judge[Space.]} )
3. Bb5 {:judge[2020-01-01 It is good.]} ( 3. Bc4 {:option[older]} Bc5 4. c3 )
3... a6 4. Ba4 Nf6 5. O-O Be7 6. Re1 =
\`\`\`

\`\`\`exercise after="1. e4 e5"
ask: Which knight?
answer: Nf3
\`\`\`

\`\`\`pattern
title: Two pawns
white: e4
black: e5
\`\`\``,
  ),
  'chapters/2.md': chapter(
    '```moves\n1. e4 c5 2. Nf3 d6 3. d4 cxd4 4. Nxd4 Nf6 5. Nc3 a6 6. Be2\n```',
    'two',
  ),
});
const before = write('before', {
  'course.yaml': settings.replace('white', 'black'),
  'chapters/1.md': chapter(
    '```moves\n1. e4 e5 2. Nf3 Nc6 3. Bc4 Bc5 4. c3 ( 4. b4 Bxb4 5. c3 )\n```',
  ),
  'chapters/3.md': chapter('```moves\n1. e4 e6 2. d4 d5 3. Nc3 Bb4 4. e5\n```', 'three'),
});
const pgn = path.join(
  write('games', {
    'a.pgn': [
      '1. e4 e5 2. Nf3 Nc6 3. Bc4 *',
      '1. e4 e5 2. f4 1-0',
      '1. e4 e5 2. f4 1-0',
      '1. e4 d5 2. exd5 0-1',
      '1. e4 d5 2. exd5 1/2-1/2',
      '1. d4 *',
      '1. e4 e5 2. Ke3 *',
      '*',
      '1. e4 e5 2. Nf3 *',
    ]
      .map((moves, index) => `[Event "E"]\n[White "W${index}"]\n\n${moves}\n`)
      .concat('[Variant "Other"]\n\n1. e4 *\n')
      .join('\n'),
  }),
  'a.pgn',
);

/** Lines beside the course, against its advice, with words, and one that cannot be played. */
const lines = `1. e4 e5 2. Nf3 Nc6 3. Bb5 {strong} Nd4 (3... Nf6) *

1. e4 e5 2. Bc4 *

1. e4 c6 2. Ke3 *
`;

type Output = keyof typeof jsonOutputs;
function described(name: Output) {
  const found = jsonOutputs[name].schema.safeParse(JSON.parse(printed));
  expect(found.error?.issues ?? []).toEqual([]);
  return found.data;
}

test('check, with and without a published handbook', async () => {
  await check(faulty, { format: 'json', fix: false });
  expect(described('check')).not.toHaveProperty('diagnostics.0.help');
  expect(printed).toMatch(/"fixes"/);
  expect(printed).toMatch(/"related": \[\s*\{/);
  printed = '';
  vi.stubEnv('LINEWRIGHT_HANDBOOK', 'https://example.org/book');
  await check(faulty, { format: 'json', fix: false });
  expect(described('check')).toHaveProperty(
    'diagnostics.0.help',
    expect.stringMatching(/^https:\/\/example\.org\/book\/rules\.html#[a-z-]+$/),
  );
});

test('check --judgements', async () => {
  await check(now, { format: 'json', fix: false, judgements: true });
  expect(described('judgements')).toHaveProperty('judgements.length', 2);
});

test('compare, with games of every kind', async () => {
  await compare(pgn, now, { format: 'json', all: false });
  described('compare');
  for (const kind of ['met', 'apart', 'empty', 'broken', 'variant']) {
    expect(printed).toContain(`"kind":"${kind}"`);
  }
});

test('compare and where of a shelf; one course with errors is left out', async () => {
  const shelf = write('shelf', {
    'shelf.yaml': 'title: All\ncourses: [one, wrong, two]\n',
    'one/course.yaml': 'title: One\nid: one\nside: white\n',
    'one/chapters/1.md': chapter('```moves\n1. e4 e5 2. Nf3 {:here[knight]} Nc6 3. Bc4\n```'),
    'wrong/course.yaml': 'title: Wrong\nid: wrong\nside: white\n',
    'wrong/chapters/1.md': chapter('```moves\n1. e4 e5 2. Ke3\n```'),
    'two/course.yaml': 'title: Two\nid: the-other\nside: white\n',
    'two/chapters/1.md': chapter('```moves\n1. e4 e5 2. Bc4 Nc6 3. Nf3\n```'),
  });
  const folders = (output: unknown) =>
    (output as { courses: { folder: string }[] }).courses.map(({ folder }) => folder);
  await compare(pgn, shelf, { format: 'json', all: false });
  expect(folders(described('compareShelf'))).toEqual(['one', 'two']);
  expect(printed).toContain('"kind":"apart"');
  printed = '';
  await where('1. e4 e5 2. Nf3 Nc6 3. Bc4', shelf, { format: 'json' });
  expect(folders(described('whereOnShelf'))).toEqual(['one', 'wrong', 'two']);
  expect(printed).toMatch(/"known": \{/);

  const asText = async (asked: string) => {
    printed = '';
    await where(asked, shelf, { format: 'text' });
    return printed.match(/^In .*|^No .*|^chapters.*/gm);
  };
  expect(await asText('1. e4 e5 2. Nf3 Nc6 3. Bc4')).toEqual([
    'In one:',
    'chapters/1.md:7:40  after 3.Bc4',
    'In two:',
    'chapters/1.md:7:24  after 3.Nf3',
  ]);
  expect((await asText('1. e4 c5'))?.slice(0, 2)).toEqual([
    'No course of the shelf has this position.',
    'In one:',
  ]);
  expect(await asText('one/knight')).toEqual(await asText('knight'));
  await expect(where('the-othr/x', shelf, { format: 'text' })).rejects.toThrow('no course');
  printed = '';
  await compare(pgn, shelf, { format: 'text', all: false });
  expect(printed.match(/^\w+:$|^\d+ games:.*/gm)).toEqual([
    'one:',
    '10 games: 6 met the course, 1 never entered it.',
    'wrong:',
    'two:',
    '10 games: 6 met the course, 1 never entered it.',
  ]);
});

test('import --into', async () => {
  const file = path.join(write('into', { 'a.pgn': lines }), 'a.pgn');
  await importPgn(file, { by: 'game', side: 'white', into: now, format: 'json' });
  described('import');
  for (const kind of ['new', 'against', 'said', 'notes']) {
    expect(JSON.parse(printed)[kind], kind).not.toEqual([]);
  }
});

test('gaps', async () => {
  await gaps(now, { format: 'json', games: [pgn], atLeast: 1, all: true });
  expect(described('gaps')).not.toHaveProperty('gaps.length', 0);
});

test('where, of positions that are there, alike, near and of moves that stop', async () => {
  for (const asked of [
    '1. e4 e5 2. Nf3',
    'rnbqkbnr/pppp1ppp/8/4p3/4P3/5N2/PPPP1PPP/RNBQKB1R w KQkq - 1 2',
    '1. e4 e5 2. Nf3 Nc6 3. h3',
    '1. e4 e5 2. Nf3 Nc6 3. Nf6',
  ]) {
    printed = '';
    await where(asked, now, { format: 'json' });
    described('where');
  }
  expect(printed).toContain('"stopped"');
});

test('changes', async () => {
  await changes(before, now, undefined, { format: 'json', write: false, date: '2026-01-01' });
  expect(described('changes')).toMatchObject({ side: { old: 'black', new: 'white' } });
  for (const status of ['new', 'kept', 'dropped']) {
    expect(printed).toContain(`"status": "${status}"`);
  }
});

test('every command that prints JSON is described', () => {
  const printing = program.commands
    .filter(({ options }) => options.some(({ argChoices }) => argChoices?.includes('json')))
    .map((command) => command.name());
  const told = Object.values(jsonOutputs).map(({ command }) => command.split(' ')[1]);
  expect([...new Set(told)].sort()).toEqual(printing.sort());
});
