/**
 * What a course, games or an argument hold does not act on the terminal: every command is given names
 * and texts full of escape codes (ECMA-48), line ends and marks of direction, and what it prints and
 * the texts that it writes are searched for them.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { stripVTControlCharacters } from 'node:util';
import { afterAll, afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { changes } from '../src/cli/changes.ts';
import { check } from '../src/cli/check/check.ts';
import { checkFormats } from '../src/cli/check/check-options.ts';
import { compare } from '../src/cli/compare/compare.ts';
import { compareFormats } from '../src/cli/compare/compare-formats.ts';
import { diagram } from '../src/cli/diagram.ts';
import { engine } from '../src/cli/engine/engine.ts';
import { exportCourse } from '../src/cli/export.ts';
import { gaps } from '../src/cli/gaps/gaps.ts';
import { gapsFormats } from '../src/cli/gaps/gaps-options.ts';
import { importPgn } from '../src/cli/import/import.ts';
import { letter } from '../src/cli/letter.ts';
import { makeNew } from '../src/cli/new.ts';

/** A window's title, a colour, a cursor that moves up, a C1 sequence, a line of one's own, an override. */
const evil = '\u001b]0;x\u0007\u001b[31m\u001b[2A\u009b1m\b\u007f\u2028\u202e\u2066';
const evilName = `a${evil}\r\n::error::b`;

const work = mkdtempSync(path.join(tmpdir(), 'linewright-terminal-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));

function write(folder: string, files: Readonly<Record<string, string>>): string {
  for (const [file, content] of Object.entries(files)) {
    const full = path.join(folder, file);
    mkdirSync(path.dirname(full), { recursive: true });
    writeFileSync(full, content);
  }
  return folder;
}

const games = [
  `[White "${evil}"]\n[Black "B${evil}"]\n[Date "${evil}"]\n[Event "${evil}"]\n\n1. e4 {${evil}} e5 2. Nf3 *\n`,
  `[White "${evil}"]\n\n1. e4 e${evil}5 2. Ke5 ${evil} *\n`,
  `[FEN "${evil}"]\n\n1. e4 *\n`,
  `[Variant "${evil}"]\n\n1. e4 *\n`,
  `[White "x"]\n\n1. e4 {${evil}\n`,
].join('\n');

const moves = '```moves\n1. e4 e5 2. Nf3 Nc6 3. Bb5\n```\n';

/** A course without errors, as far as any that holds such signs can be. */
const sound = write(path.join(work, evilName), {
  'course.yaml': `title: "A\u202e\u2028"\nside: white\nauthor: "B\u2066"\n`,
  'chapters/1.md': `---\ntitle: "One\u202e"\n---\n\nText\u202e\u2066.\n\n${moves}\n\`\`\`game file="games/a.pgn"\n\`\`\`\n`,
  'games/a.pgn': games,
});
const older = write(path.join(work, `older${evilName}`), {
  'course.yaml': `title: "A"\nside: white\n`,
  'chapters/1.md': `---\ntitle: "One${'\u202e'}"\n---\n\n\`\`\`moves\n1. d4 d5 2. c4\n\`\`\`\n`,
});
const unsound = write(path.join(work, `unsound${evilName}`), {
  'course.yaml': `title: "\\e[31m"\nside: white\n${JSON.stringify(evil)}: x\nrules:\n  ${JSON.stringify(evil)}: off\n`,
  [`chapters/1${evilName}.md`]: `---\ntitle: "\\e]0;x\\a"\n---\n\n![x](${evil.replaceAll('\u2028', '')}.png) [x](pos:a${evil})\n\n\`\`\`moves\n1. e4 e${evil}5 {:claim[${evil}]} {:judge[Judged ${evil}]}\n\`\`\`\n`,
});
const pgn = path.join(write(work, { [`${evilName}.pgn`]: games }), `${evilName}.pgn`);

let printed = '';
beforeEach(() => {
  printed = '';
  vi.stubEnv('NO_COLOR', '1');
  for (const stream of [process.stdout, process.stderr]) {
    vi.spyOn(stream, 'write').mockImplementation((chunk) => {
      printed += typeof chunk === 'string' ? chunk : Buffer.from(chunk).toString('utf8');
      return true;
    });
  }
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllEnvs();
});

/** Code points of what would act, with what stands around the first of them. */
function acting(text: string): string {
  const found = /[^\P{Cc}\n]|[\u2028\u2029\u202a-\u202e\u2066-\u2069]/u.exec(text);
  return found
    ? `U+${found[0].charCodeAt(0).toString(16)} in ${JSON.stringify(text.slice(Math.max(0, found.index - 60), found.index + 60))}`
    : '';
}

/** Also that no name began a line of its own. */
function expectHarmless(): void {
  expect(printed).not.toBe('');
  expect(acting(printed)).toBe('');
  expect(printed).not.toMatch(/^::error::b/m);
}

/** Files made of text. Marks of direction are a part of it: no terminal obeys what an editor shows. */
function expectHarmlessFiles(folder: string): void {
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  const texts = files.filter((file) => /\.(?:md|txt|yaml|pgn|json|xml|svg)$/.test(file));
  expect(texts).not.toEqual([]);
  for (const file of texts)
    expect(readFileSync(path.join(folder, file), 'utf8')).not.toMatch(/[^\P{Cc}\n]/u);
}

describe('no control sign but the line end comes out of', () => {
  test.each(checkFormats)('check --format %s', async (format) => {
    for (const folder of [sound, unsound]) await check(folder, { format, fix: false });
    expectHarmless();
  });

  test.each(['text', 'json'] as const)('check --judgements --format %s', async (format) => {
    for (const folder of [sound, unsound]) {
      await check(folder, { format, fix: false, judgements: true });
    }
    expect(printed).toContain('Judged');
    expectHarmless();
  });

  test('check with colours, but for the codes of ours', async () => {
    vi.stubEnv('NO_COLOR', undefined);
    vi.stubEnv('FORCE_COLOR', '1');
    await check(unsound, { format: 'text', fix: false });
    expect(printed).toContain('\u001b[31merror\u001b[39m');
    printed = stripVTControlCharacters(printed);
    expectHarmless();
    // A code of the author's that came through would be gone by now.
    expect(printed).toContain('[2A');
  });

  test.each(compareFormats)('compare --format %s', async (format) => {
    await compare(pgn, sound, { format, all: true });
    expectHarmless();
  });

  test('compare, of a player whom nobody knows', async () => {
    await compare(pgn, sound, { format: 'text', all: true, player: evilName });
    expectHarmless();
  });

  test.each(gapsFormats)('gaps --format %s', async (format) => {
    await gaps(sound, { format, games: [pgn], atLeast: 1, all: true });
    expectHarmless();
  });

  test('engine, and what it keeps of an engine with such a name', async () => {
    const script = `
      const say = (line) => process.stdout.write(line + '\\n');
      require('node:readline').createInterface({ input: process.stdin }).on('line', (line) => {
        if (line === 'uci') say('id name A' + ${JSON.stringify(evil)} + '\\tB\\nuciok');
        if (line === 'isready') say('readyok');
        if (line.startsWith('go')) {
          process.stderr.write(${JSON.stringify(evil)});
          say('info depth 9 score cp 1 pv e2e4\\nbestmove e2e4');
        }
      });`;
    await engine(sound, {
      ...{ engine: process.execPath, argument: ['-e', script], option: [], depth: 5, lines: 1 },
      ...{ hash: 1, jobs: 1, keep: 'course', patience: 60, prune: false },
    });
    expectHarmless();
    expect(readFileSync(path.join(sound, 'facts/engine.tsv'), 'utf8')).not.toMatch(
      /[^\P{Cc}\n\t]/u,
    );
    rmSync(path.join(sound, 'facts'), { recursive: true });
  });

  test('import, and what it writes', async () => {
    const out = path.join(work, 'imported');
    await importPgn(pgn, { by: 'game', side: 'both', out });
    expectHarmless();
    expectHarmlessFiles(out);
  });

  test.each(['text', 'markdown', 'json'] as const)('changes --format %s', async (format) => {
    await changes(older, sound, undefined, { format, write: false, date: '2026-01-01' });
    expectHarmless();
  });

  test('changes --write, and the news', async () => {
    const options = { format: 'text', write: true, date: '2026-01-01' } as const;
    await changes(older, sound, undefined, options);
    expectHarmless();
    expectHarmlessFiles(path.join(sound, 'news'));
    rmSync(path.join(sound, 'news'), { recursive: true });
  });

  test('letter, and its plain text', async () => {
    const out = path.join(work, `letter${evil}`);
    await letter('1', sound, { out });
    expectHarmless();
    expectHarmlessFiles(out);
  });

  test('export as PGN', async () => {
    await exportCourse(sound, { format: 'pgn', out: path.join(work, 'out', 'a.pgn') });
    expectHarmless();
    expectHarmlessFiles(path.join(work, 'out'));
  });

  test('diagram', async () => {
    const options = {
      fen: '8/8/8/8/8/8/8/K1k5 w - - 0 1',
      size: 100,
      coordinates: true,
      alt: true,
    };
    const out = path.join(work, `x${evil}.svg`);
    await diagram(sound, { ...options, out, theme: 'two-tone', caption: 'A\u202e' });
    expectHarmless();
  });

  test('new', async () => {
    await makeNew(path.join(work, `new${evilName}`));
    expectHarmless();
  });
});

test.each([
  ['an argument that nobody knows', [evilName]],
  ['an option', ['check', `--${evilName}`]],
  ['a choice', ['check', '--format', evilName]],
  ['a folder that is not there', ['build', path.join(work, `none${evilName}`)]],
  ['a revision that is none', ['changes', `v${evilName}`, `w${evilName}`, sound]],
])('nor out of the program for %s', (_, parameters) => {
  const cli = path.resolve(import.meta.dirname, '../dist/cli/main.js');
  const { stdout, stderr } = spawnSync(process.execPath, [cli, ...parameters], {
    encoding: 'utf8',
    env: { ...process.env, NO_COLOR: '1' },
  });
  printed = stdout + stderr;
  expectHarmless();
});
