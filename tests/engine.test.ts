/**
 * Engines that do what real ones do wrong (`tests/engines/fake.mjs`), and a sound one: Stockfish, where it is
 * installed (GPL: for tests only), which gives the same answers to the same number of nodes.
 */
import { spawn } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { type EngineOptions, lookAt, positionsToLookAt, startEngine } from '../src/engine/index.ts';
import { type EngineFact, parseFactsFile } from '../src/facts/index.ts';
import { courseOf } from '../src/model/testing/course-of.ts';
import { type Ran, runHere } from './setup/run-here.ts';

const fake = path.resolve('tests/engines/fake.mjs');
const stockfish = '/usr/games/stockfish';
const work = mkdtempSync(path.join(tmpdir(), 'linewright-engine-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));

const moves = (text: string) => `\`\`\`moves\n${text}\n\`\`\`\n`;

/** In milliseconds: long enough for a machine with other work, and for those who are waited for in vain. */
const enough = 60_000;
const short = 4000;

function optionsFor(args: readonly string[], more: Partial<EngineOptions> = {}): EngineOptions {
  return {
    program: process.execPath,
    args: [fake, ...args],
    limit: { by: 'depth', number: 10 },
    lines: 2,
    hash: 16,
    own: [],
    patience: enough,
    ...more,
  };
}

/** What comes of the positions of a course with one of the fakes. */
async function lookWith(
  args: readonly string[],
  { more = {}, text = '1. e4 e5 2. Nf3' }: { more?: Partial<EngineOptions>; text?: string } = {},
) {
  const options = optionsFor(args, more);
  const facts: EngineFact[] = [];
  const left: string[] = [];
  let started = 0;
  const start = () => {
    started++;
    return startEngine(options);
  };
  const unseen = await lookAt(positionsToLookAt(courseOf(moves(text))), {
    jobs: 1,
    first: await start(),
    start,
    settings: 'depth 10',
    signal: new AbortController().signal,
    onFact: (fact) => facts.push(fact),
    onLeft: ({ place, after }, reason) => left.push(`${place} ${after}: ${reason}`),
  });
  return { facts, left, unseen, started };
}

describe.concurrent('an engine that is sound', () => {
  test('is asked about each position once', async () => {
    const { facts, left, unseen, started } = await lookWith(['good']);
    expect([left, unseen, started]).toEqual([[], 0, 1]);
    expect(facts.map(({ lines }) => lines[0]?.moves)).toEqual([['a3'], ['a6'], ['a3'], ['a6']]);
    expect(facts[0]).toEqual({
      key: 'rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR w KQkq -',
      engine: 'Fake 1',
      settings: 'depth 10',
      depth: 12,
      // It was asked for two lines, and has none but one to give.
      lines: [{ score: { kind: 'pawns', hundredths: 10 }, moves: ['a3'] }],
    });
  });

  test.each(['long line', 'loud stderr', 'twice', 'twice, late'])('though: %s', async (mode) => {
    const { facts, left } = await lookWith([mode]);
    expect(left).toEqual([]);
    expect(facts.map(({ lines }) => lines[0]?.moves)).toEqual([['a3'], ['a6'], ['a3'], ['a6']]);
  });

  test('may find a mate', async () => {
    const { facts } = await lookWith(['mate'], { text: '1. e4' });
    expect(facts[0]?.lines[0]?.score).toEqual({ kind: 'mate', moves: 3 });
  });
});

describe.concurrent('an engine that fails is started again, the position tried once more, then named', () => {
  test('once is forgiven', async () => {
    const { facts, left, started } = await lookWith(['once', path.join(work, 'once')]);
    expect([facts.length, left, started]).toEqual([4, [], 2]);
  });

  test.each([
    ['no move', 'its move (none) begins none of its lines'],
    ['null move', 'its move 0000 begins none of its lines'],
    ['bare bestmove', 'its move  begins none of its lines'],
    ['another position', 'its move h4h5 cannot be played'],
    ['another move', 'its move h2h4 begins none of its lines'],
    ['no score', 'it gave a move and no score'],
    ['bounds', 'it gave a move and no score'],
    ['shallow', 'it stopped at depth 1, far short of what it was asked for'],
    ['half a line', 'it ended with code 0'],
    ['exit 0', 'it ended with code 0'],
    ['exit 3', 'it ended with code 3, and said: no network file'],
    ['signal', 'it was ended by SIGSEGV'],
  ])('%s', async (mode, reason) => {
    const { facts, left, started, unseen } = await lookWith([mode], { text: '1. e4' });
    expect(facts).toEqual([]);
    expect(left).toEqual([`chapters/1.md:1 : ${reason}`, `chapters/1.md:2 1.e4: ${reason}`]);
    // The first of each position, and the second.
    expect([started, unseen]).toEqual([4, 0]);
  });

  test.each([
    ['silent', 'it said nothing for 2 seconds'],
    ['endless', 'it gave no move within 4.1 seconds'],
    ['babbling', 'it gave no move within 4.1 seconds'],
  ])('%s', async (mode, reason) => {
    const options = optionsFor([mode], {
      patience: short,
      greeting: enough,
      // A silent one is given up long before its time is over, however busy the machine.
      limit: { by: 'time', number: mode === 'silent' ? enough : 100 },
    });
    const engine = await startEngine(options);
    const fen = 'rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR w KQkq - 0 1';
    await expect(engine.search(fen)).rejects.toThrow(reason);
    engine.kill();
  });

  test('at five positions in a row it is given up', async () => {
    const { left, unseen } = await lookWith(['exit 0'], {
      text: '1. e4 e5 2. Nf3 Nc6 3. Bc4 Bc5 4. c3',
    });
    expect([left.length, unseen]).toEqual([5, 3]);
  });
});

describe.concurrent('what is no engine cannot be used', () => {
  test('a program that does not know UCI', async () => {
    const options = optionsFor(['no uciok'], { greeting: 600 });
    await expect(startEngine(options)).rejects.toThrow(
      'it did not answer with uciok within 0.6 seconds',
    );
  });

  test('a program that is not there, or lacks an option', async () => {
    const nowhere = optionsFor([], { program: path.join(work, 'nowhere') });
    await expect(startEngine(nowhere)).rejects.toThrow('there is no program');
    const other = optionsFor(['good'], { own: [['Style', 'Wild']] });
    await expect(startEngine(other)).rejects.toThrow('it has no option Style; it has Hash');
  });
});

let courses = 0;

/** A course in a folder of its own. */
function writeCourse(text: string, more: Readonly<Record<string, string>> = {}): string {
  const folder = path.join(work, `course-${++courses}`);
  const files = {
    'course.yaml': 'title: A\nid: a\nside: white\n',
    'chapters/1.md': `---\ntitle: One\n---\n\n${text}`,
    ...more,
  };
  for (const [file, content] of Object.entries(files)) {
    mkdirSync(path.dirname(path.join(folder, file)), { recursive: true });
    writeFileSync(path.join(folder, file), content);
  }
  return folder;
}

interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly said: string;
}

/** Runs the built program. @param onStart gets the process. */
function run(
  args: readonly string[],
  onStart: (child: ReturnType<typeof spawn>) => void = () => {},
): Promise<Ended> {
  const child = spawn(process.execPath, ['dist/cli/main.js', ...args], {
    env: { ...process.env, LINEWRIGHT_CACHE: path.join(work, 'cache') },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let out = '';
  let said = '';
  child.stdout.on('data', (chunk) => {
    out += chunk;
  });
  child.stderr.on('data', (chunk) => {
    said += chunk;
  });
  onStart(child);
  return new Promise((resolve) => child.on('close', (code) => resolve({ code, out, said })));
}

const fakeArgs = (mode: string) => [
  ...['--engine', process.execPath, '--argument', fake, '--argument', mode],
  ...['--depth', '10', '--jobs', '1'],
];
const factsIn = (folder: string) => readFileSync(path.join(folder, 'facts/engine.tsv'), 'utf8');

describe.concurrent('linewright engine', () => {
  test('keeps results in the course, and knows them the next time', async () => {
    const folder = writeCourse(moves('1. e4 e5 2. Nf3'));
    const first = await run(['engine', folder, ...fakeArgs('good')]);
    expect(first).toMatchObject({ code: 0, said: '' });
    expect(first.out).toContain(
      'Fake 1, depth 10, lines 3, hash 64: 4 positions, 0 known already.',
    );
    const text = factsIn(folder);
    expect(parseFactsFile(text).facts).toHaveLength(4);
    const second = await run(['engine', folder, ...fakeArgs('good')]);
    expect(second.out).toContain('4 positions, 4 known already.\n0 positions looked at.');
    expect(factsIn(folder)).toBe(text);
  });

  test('that is interrupted keeps what it has, and goes on the next time', async () => {
    const folder = writeCourse(
      moves(
        '1. e4 e5 2. Nf3 Nc6 3. Bb5 Nf6 4. O-O Be7 5. Re1 d6 6. c3 O-O 7. h3 h6 8. d4 Re8 9. d5',
      ),
    );
    const isStuck = path.join(work, 'is-stuck');
    let child: ReturnType<typeof spawn> | undefined;
    const ended = run(
      ['engine', folder, ...fakeArgs('three, then none'), '--argument', isStuck],
      (started) => {
        child = started;
      },
    );
    await expect.poll(() => existsSync(isStuck)).toBe(true);
    child?.kill('SIGINT');
    const stopped = await ended;
    expect(stopped.code).toBe(1);
    expect(stopped.out).toContain('Stopped: 15 positions to go. Run the command again to go on.');
    expect(parseFactsFile(factsIn(folder)).facts).toHaveLength(3);
    const again = await run(['engine', folder, ...fakeArgs('good')]);
    expect(again.code).toBe(0);
    expect(again.out).toContain('18 positions, 3 known already.');
    expect(parseFactsFile(factsIn(folder)).facts).toHaveLength(18);
  });
});

/** As `run`, in this process, so one at a time. */
async function here(
  args: readonly string[],
): Promise<{ code: Ran['status'] } & Omit<Ended, 'code'>> {
  const { status, stdout, stderr } = await runHere(...args);
  return { code: status ?? 0, out: stdout, said: stderr };
}

describe('linewright engine, in this process', () => {
  beforeAll(() => vi.stubEnv('LINEWRIGHT_CACHE', path.join(work, 'cache-here')));
  afterAll(() => vi.unstubAllEnvs());

  test('names what was left, and ends with 1', async () => {
    const folder = writeCourse(moves('1. e4 e5'));
    const { code, out } = await here(['engine', folder, ...fakeArgs('bounds')]);
    expect(code).toBe(1);
    expect(out).toContain('3 positions left, at which the engine failed twice:');
    expect(out).toContain('chapters/1.md:6  after 1.e4: it gave a move and no score');
  });

  test('leaves results alone that it cannot read', async () => {
    const broken = '<<<<<<< HEAD\n';
    const folder = writeCourse(moves('1. e4'), { 'facts/engine.tsv': broken });
    const { code, said } = await here(['engine', folder, ...fakeArgs('good')]);
    expect(code).toBe(2);
    expect(said).toMatch(/^Line 1 of .*engine\.tsv cannot be read: it is a mark of a merge/);
    expect(factsIn(folder)).toBe(broken);
  });

  test('writes through no link', async () => {
    const folder = writeCourse(moves('1. e4'));
    const outside = path.join(work, 'outside');
    mkdirSync(outside);
    symlinkSync(outside, path.join(folder, 'facts'));
    const { code, said } = await here(['engine', folder, ...fakeArgs('good')]);
    expect({ code, said }).toMatchObject({ code: 2, said: expect.stringContaining('is a link') });
    expect(readdirSync(outside)).toEqual([]);
    // Nothing else needs what an engine said.
    const checked = await here(['check', folder]);
    expect(checked.out).toContain('facts:1:1  warning  facts-unreadable');
    expect(checked.code).toBe(0);
  });

  test('takes out what the course has no more, if asked', async () => {
    const folder = writeCourse(moves('1. e4 e5 2. Nf3'));
    await here(['engine', folder, ...fakeArgs('good')]);
    writeFileSync(path.join(folder, 'chapters/1.md'), `---\ntitle: One\n---\n\n${moves('1. e4')}`);
    await here(['engine', folder, ...fakeArgs('good'), '--prune']);
    expect(parseFactsFile(factsIn(folder)).facts).toHaveLength(2);
  });

  test('keeps results in the cache, where check and gaps find them', async () => {
    const folder = writeCourse(moves('1. e4 e5 2. Nf3'));
    await here(['engine', folder, ...fakeArgs('good'), '--keep', 'cache']);
    expect(existsSync(path.join(folder, 'facts'))).toBe(false);
    const { out, code } = await here(['gaps', folder, '--format', 'json']);
    expect(code).toBe(0);
    const { gaps, sums } = JSON.parse(out);
    expect(sums).toEqual({ gaps: 1, enginePositions: 4, games: 0 });
    expect(gaps[0]).toEqual({
      position: 'rnbqkbnr/pppppppp/8/8/4P3/8/PPPP1PPP/RNBQKBNR b KQkq -',
      line: ['e4'],
      reply: 'a6',
      place: { file: 'chapters/1.md', line: 6, column: 7, behind: '1...e5' },
      engine: { engine: 'Fake 1', depth: 12, rank: 1, score: '+0.10', loss: 0 },
    });
  });
});

describe.skipIf(!existsSync(stockfish))('with Stockfish at so many nodes', () => {
  // What is wrong here is wrong by counting pieces, and by the mates on the board.
  const text = `${moves('1. e4 e5 2. Qh5 Nc6 3. Qxf7+ Kxf7 4. Nf3')}

\`\`\`exercise fen="6k1/5ppp/8/8/8/8/5PPP/RR4K1 w - - 0 1"
ask: Mate in one.
answer: 1. Ra8#
\`\`\`

${moves('1. d4 {:option[or so]} d5 2. Qd3 Nc6 3. Qxh7 +-')}`;
  const args = ['--engine', stockfish, '--nodes', '10000'];

  test('check tells what it said, and another number of engines says the same', async () => {
    const [one, two] = [writeCourse(text), writeCourse(text)];
    await here(['engine', one, ...args, '--jobs', '1']);
    await here(['engine', two, ...args, '--jobs', '2']);
    expect(factsIn(two)).toBe(factsIn(one));
    const { stdout, status } = await runHere('check', one, '--format', 'json');
    expect(status).toBe(0);
    const found = JSON.parse(stdout).diagnostics.filter(({ rule = '' }) =>
      rule.startsWith('engine-'),
    );
    const told = found.map(({ rule, start }: { rule: string; start: { line: number } }) =>
      [rule, start.line].join(' '),
    );
    expect(told).toEqual(
      expect.arrayContaining(['engine-advice 6', 'engine-exercise 12', 'engine-verdict 16']),
    );
    const doubtful = await here(['engine', one, ...args, '--nodes', '40000', '--doubtful']);
    const [, looked = ''] = /: (\d+) positions, 0 known/.exec(doubtful.out) ?? [];
    // Of 14 positions those around the four findings.
    expect(Number(looked)).toBeGreaterThan(4);
    expect(Number(looked)).toBeLessThan(14);
    expect(found.every(({ severity = '' }) => severity === 'warning')).toBe(true);
  });
});

describe('linewright gaps', () => {
  const gaps = (...args: readonly string[]) => runHere('gaps', ...args);

  const text = moves('1. d4 d5 (1... Nf6 2. c4 d5 =) 2. c4 e6 3. Nc3');
  const games = [
    ...Array.from({ length: 3 }, () => '[Result "*"]\n\n1. d4 d5 2. c4 c6 *\n'),
    '[Result "*"]\n\n1. d4 d5 2. c4 Nc6 *\n',
  ].join('\n');

  test('prints what is missing with the place to write it', async () => {
    const folder = writeCourse(text, { 'g.pgn': games });
    const { status, stdout } = await gaps(folder, '--games', path.join(folder, 'g.pgn'));
    expect(status).toBe(0);
    expect(stdout).toBe(
      [
        '2 replies missing, the most wanted first; looked for: replies that lead back into the course, 4 games.',
        'No results of an engine are kept: linewright engine makes some.',
        '',
        '  1  2...c6  after 1.d4 d5 2.c4',
        '     chapters/1.md:6:38  write it behind 2...e6',
        '     played in 3 games',
        '',
        '  2  2...Nf6  after 1.d4 d5 2.c4',
        '     chapters/1.md:6:38  write it behind 2...e6',
        '     leads to a position of the course: chapters/1.md:6',
        '',
      ].join('\n'),
    );
  });

  test('ends with 1 where games are broken or the course is, with 2 where there is no game', async () => {
    const folder = writeCourse(text, {
      'g.pgn': `${games}\n[Result "*"]\n\n1. d4 d6 2. Ke5 *\n`,
      'no.pgn': '\n',
    });
    const broken = await gaps(folder, '--games', path.join(folder, 'g.pgn'));
    expect(broken.stderr).toContain('1 game left out');
    const none = await gaps(folder, '--games', path.join(folder, 'no.pgn'));
    expect(none.stderr).toContain('No game was found');
    const wrong = await gaps(writeCourse(moves('1. e5')));
    expect(wrong.stderr).toContain('the course has errors');
    expect([broken, none, wrong].map(({ status }) => status)).toEqual([1, 2, 1]);
  });
});
