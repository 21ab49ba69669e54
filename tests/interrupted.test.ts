/**
 * A build that is interrupted: by the signals of a terminal, of a service manager and of a closed
 * window, and by a kill that nobody can answer. Nothing runs on, no temporary folder stays, and the
 * earlier site stands.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-cut-'));
const course = path.join(work, 'course');
const temporary = path.join(work, 'tmp');
const index = path.join(course, 'site', 'index.html');
afterAll(() => rmSync(work, { recursive: true, force: true }));

/** Starts the built program as the leader of a group, so that its children can be found. */
function start(...args: readonly string[]): { child: ChildProcess; ended: Promise<string> } {
  const child = spawn(process.execPath, [path.resolve('dist/cli/main.js'), ...args], {
    cwd: work,
    detached: true,
    env: {
      ...process.env,
      TMPDIR: temporary,
      // Nothing is kept, so that a build takes long enough to be interrupted.
      LINEWRIGHT_CACHE: mkdtempSync(path.join(work, 'cache-')),
    },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let said = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream.on('data', (chunk) => {
      said += chunk;
    });
  }
  const ended = new Promise<string>((resolve) => {
    child.on('exit', (code, signal) => resolve(`${signal ?? code} ${said}`));
  });
  return { child, ended };
}

/** The processes of a group, by Linux's table of processes (proc(5), field `pgrp` of `stat`). */
function groupOf(leader: number | undefined): string[] {
  return readdirSync('/proc').filter((pid) => {
    if (!/^\d+$/.test(pid)) return false;
    try {
      const [state, , pgrp] =
        readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ')[1]?.split(' ') ?? [];
      return state !== 'Z' && Number(pgrp) === leader;
    } catch {
      return false;
    }
  });
}

const leftovers = () => readdirSync(temporary).filter((name) => name.startsWith('linewright-'));

/**
 * Kills a build while it makes pages: the first of them is written. On a machine so busy that the build is over before
 * the signal comes, another is tried.
 */
async function interrupt(
  signal: NodeJS.Signals,
): Promise<{ pid: number | undefined; said: string }> {
  const isBegun = () =>
    leftovers().some((name) => existsSync(path.join(temporary, name, 'site', 'index.html')));
  let said = '';
  for (let tries = 0; tries < 5; tries++) {
    writeFileSync(index, 'the earlier site');
    const { child, ended } = start('build', course);
    await expect.poll(() => isBegun() || child.exitCode !== null, { interval: 5 }).toBe(true);
    child.kill(signal);
    said = await ended;
    if (!said.startsWith('0 ')) return { pid: child.pid, said };
  }
  throw new Error(`no build was interrupted: ${said}`);
}

beforeAll(async () => {
  mkdirSync(path.join(course, 'chapters'), { recursive: true });
  mkdirSync(temporary);
  writeFileSync(path.join(course, 'course.yaml'), 'title: Small\nside: white\n');
  // So many that their cards are drawn by processes of their own.
  for (let chapter = 1; chapter <= 12; chapter += 1) {
    writeFileSync(
      path.join(course, `chapters/${chapter}.md`),
      `---\ntitle: Chapter ${chapter}\n---\n\n\`\`\`moves\n1. e4 e5 2. Nf3\n\`\`\`\n`,
    );
  }
  expect(await start('build', course).ended).toMatch(/^0 /);
  expect(leftovers()).toEqual([]);
});

for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) {
  test(`${signal} during a build leaves the earlier site, no process and no folder`, async () => {
    const { pid, said } = await interrupt(signal);
    expect(said).toMatch(new RegExp(`^${signal} `));
    await expect.poll(() => groupOf(pid)).toEqual([]);
    await expect.poll(leftovers).toEqual([]);
    expect(readFileSync(index, 'utf8')).toBe('the earlier site');
    expect(readdirSync(course).filter((name) => name.startsWith('.site'))).toEqual([]);
  });
}

test('SIGKILL leaves the earlier site and no process; what else it leaves the next build removes', async () => {
  const { pid, said } = await interrupt('SIGKILL');
  expect(said).toMatch(/^SIGKILL /);
  await expect.poll(() => groupOf(pid)).toEqual([]);
  expect(readFileSync(index, 'utf8')).toBe('the earlier site');
  // Nobody is left who could remove it.
  expect(leftovers()).toHaveLength(1);
  // Of another process that runs, and of nobody.
  mkdirSync(path.join(temporary, `linewright-${process.pid}-abcdef`));
  mkdirSync(path.join(temporary, 'linewright-mine'));
  expect(await start('build', course).ended).toMatch(/^0 /);
  expect(leftovers().sort()).toEqual(
    [`linewright-${process.pid}-abcdef`, 'linewright-mine'].sort(),
  );
  for (const name of leftovers()) rmSync(path.join(temporary, name), { recursive: true });
});

for (const signal of ['SIGINT', 'SIGHUP', 'SIGKILL'] as const) {
  test(`${signal} ends dev with all that it has started`, async () => {
    const { child, ended } = start('dev', course, '--port', '4290');
    await expect.poll(leftovers).toHaveLength(1);
    child.kill(signal);
    await ended;
    await expect.poll(() => groupOf(child.pid)).toEqual([]);
    // A killed process cannot remove its own folder: the next one does, as above.
    await expect.poll(leftovers).toHaveLength(signal === 'SIGKILL' ? 1 : 0);
  });
}
