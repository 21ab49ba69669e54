/**
 * A course whose files are no plain files of its own: every command ends, names them, and neither
 * prints nor publishes a word from outside the course. A command that waits is killed and fails.
 */
import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { createServer, type Server } from 'node:net';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, inject, test, vi } from 'vitest';
import { changes } from '../src/cli/changes.ts';
import { compare } from '../src/cli/compare/compare.ts';
import { diagram } from '../src/cli/diagram.ts';
import { exportCourse } from '../src/cli/export.ts';
import { gaps } from '../src/cli/gaps/gaps.ts';
import { letter } from '../src/cli/letter.ts';

/** What no command may ever print or write; it stands outside the course. */
const secret = 'hush-e9f2';
/** A command that has not ended by now waits for a file. */
const patience = 200_000;

let work: string;
let sound: string;
let hostile: string;
let socket: Server;

const chapter = (text: string) => `---\ntitle: One\n---\n\n${text}\n`;
const moves = '```moves\n1. e4 {:here[king]} e5 2. Nf3\n```';

beforeAll(async () => {
  work = mkdtempSync(path.join(inject('runFolder'), 'hostile-'));
  const outside = path.join(work, 'outside');
  for (const folder of ['chapters', 'games', 'media', 'news']) {
    mkdirSync(path.join(outside, folder), { recursive: true });
  }
  // Wrong in every way, so that a finding would print it.
  writeFileSync(
    path.join(outside, 'chapters/1.md'),
    `${secret}\n\n:${secret}[x] [${secret}](x.md)`,
  );
  writeFileSync(path.join(outside, 'games/a.pgn'), `1. ${secret} *\n`);
  writeFileSync(path.join(outside, 'media/a.png'), secret);
  writeFileSync(path.join(outside, 'course.yaml'), `${secret}: 1\n`);

  sound = path.join(work, 'sound');
  mkdirSync(path.join(sound, 'chapters'), { recursive: true });
  writeFileSync(path.join(sound, 'course.yaml'), 'title: Sound\nside: white\n');
  writeFileSync(path.join(sound, 'chapters/1.md'), chapter(moves));

  hostile = path.join(work, 'hostile');
  cpSync(sound, hostile, { recursive: true });
  const at = (name: string) => path.join(hostile, name);
  mkdirSync(at('games'));
  mkdirSync(at('media/deep'), { recursive: true });
  execFileSync('mkfifo', [at('chapters/2-pipe.md'), at('games/pipe.pgn'), at('media/pipe.png')]);
  symlinkSync('/dev/zero', at('chapters/3-device.md'));
  symlinkSync(path.join(outside, 'chapters/1.md'), at('chapters/4-file.md'));
  symlinkSync('5-loop.md', at('chapters/5-loop.md'));
  symlinkSync('nowhere', at('chapters/6-dangling.md'));
  symlinkSync('1.md', at('chapters/7-inside.md'));
  mkdirSync(at('chapters/8-folder.md'));
  symlinkSync(path.join(outside, 'games/a.pgn'), at('games/link.pgn'));
  symlinkSync(path.join(outside, 'media/a.png'), at('media/link.png'));
  symlinkSync(path.join(outside, 'media'), at('media/deep/folder'));
  symlinkSync(path.join(outside, 'news'), at('news'));
  socket = createServer().listen(at('chapters/9-socket.md'));
  await new Promise((resolve) => socket.once('listening', resolve));
});
afterAll(() => socket?.close());

interface Ended {
  readonly code: number | null;
  readonly said: string;
}

const cli = path.resolve(import.meta.dirname, '../dist/cli/main.js');

function start(args: readonly string[]): { child: ChildProcess; ended: Promise<Ended> } {
  const env = { ...process.env, NO_COLOR: '1', LINEWRIGHT_CACHE: path.join(work, 'cache') };
  const child = spawn(process.execPath, [cli, ...args], { env, stdio: 'pipe' });
  let said = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream.on('data', (chunk) => {
      said += chunk;
    });
  }
  const watchdog = setTimeout(() => child.kill('SIGKILL'), patience);
  const ended = new Promise<Ended>((resolve) => {
    child.on('close', (code) => {
      clearTimeout(watchdog);
      resolve({ code, said: said.replaceAll(work, 'WORK') });
    });
  });
  return { child, ended };
}

const run = (...args: readonly string[]) => start(args).ended;

test('check names each of them, and no word of what they lead to', async () => {
  const { code, said } = await run('check', hostile);
  expect(code).toBe(1);
  expect(said).not.toContain(secret);
  const link = 'This is a link, and a course is read without following links.';
  const findings = [...said.matchAll(/^(\S+):1:1 {2}error {2}\S+\n {2}(.*)$/gm)];
  expect(Object.fromEntries(findings.map(([, file, message]) => [file, message]))).toEqual({
    'chapters/2-pipe.md': 'This is a pipe, not a file.',
    'chapters/3-device.md': link,
    'chapters/4-file.md': link,
    'chapters/5-loop.md': link,
    'chapters/6-dangling.md': link,
    'chapters/7-inside.md': link,
    'chapters/8-folder.md': 'This is a folder where a file should be.',
    'chapters/9-socket.md': 'This is a socket, not a file.',
    'games/link.pgn': link,
    'games/pipe.pgn': 'This is a pipe, not a file.',
    'media/deep/folder': link,
    'media/link.png': link,
    'media/pipe.png': 'This is a pipe, not a file.',
    news: link,
  });
});

describe('no command publishes anything of it', () => {
  /** Runs a command in this process, as the program does. */
  async function here(command: () => Promise<number>): Promise<Ended> {
    let said = '';
    const spies = [process.stdout, process.stderr].map((stream) =>
      vi.spyOn(stream, 'write').mockImplementation((text) => {
        said += text;
        return true;
      }),
    );
    try {
      const code = await command();
      return { code, said: said.replaceAll(work, 'WORK') };
    } finally {
      for (const spy of spies) spy.mockRestore();
    }
  }

  const edition = { format: 'text', write: false, date: '2026-11-25' } as const;
  const picture = { at: 'king', out: '-', size: 560, coordinates: true, alt: false } as const;
  const report = { format: 'text', all: false } as const;
  test.each<[string, () => Promise<Ended>]>([
    ['build', () => run('build', hostile)],
    ['letter', () => here(() => letter('1', hostile, {}))],
    ['export', () => here(() => exportCourse(hostile, { format: 'epub' }))],
    ['changes, to it', () => here(() => changes(sound, hostile, undefined, edition))],
    ['diagram', () => here(() => diagram(hostile, { ...picture, theme: 'two-tone' }))],
    ['compare', () => here(() => compare(cli, hostile, report))],
    ['gaps', () => here(() => gaps(hostile, { ...report, atLeast: 2 }))],
  ])('%s', async (_, command) => {
    const before = readdirSync(hostile);
    const { code, said } = await command();
    expect(said).toContain('chapters/2-pipe.md:1:1');
    expect(said).not.toContain(secret);
    expect(code).toBe(1);
    expect(readdirSync(hostile)).toEqual(before);
  });

  test('changes, from it', async () => {
    const { code, said } = await here(() => changes(hostile, sound, undefined, edition));
    expect(said).toMatch(/^WORK\/hostile has \d+ errors by today's rules/);
    expect(code).toBe(0);
  });

  test('dev, which shows what can be read', async () => {
    const { child, ended } = start(['dev', hostile, '--port', '4980']);
    let shown = '';
    child.stdout?.on('data', async (chunk) => {
      const [address] = /http:\/\/\S+\//.exec(String(chunk)) ?? [];
      if (address === undefined) return;
      for (const file of ['', 'print.html', 'media/link.png', 'media/deep/folder/a.png']) {
        shown += await (await fetch(address + file)).text();
      }
      child.kill();
    });
    const { said } = await ended;
    expect(said).toContain('chapters/2-pipe.md:1:1');
    expect(said).toContain('follows your files');
    expect(shown).toContain('</html>');
    expect(said + shown).not.toContain(secret);
  });
});

test('a picture is published from the course alone', async () => {
  const folder = path.join(work, 'pictured');
  cpSync(sound, folder, { recursive: true });
  symlinkSync(path.join(work, 'outside/media'), path.join(folder, 'media'));
  writeFileSync(path.join(folder, 'chapters/1.md'), chapter(`${moves}\n\n![A](../media/a.png)`));
  expect((await run('build', folder)).code).toBe(1);
  const published = path.join(folder, 'site/media/a.png');
  expect(existsSync(published) && readFileSync(published, 'utf8')).toBe(false);
});
