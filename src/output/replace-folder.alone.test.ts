/**
 * The exchange of an output, cut short at every single call to the file system: by a kill before and
 * within it, and by errors of the system. What must hold each time is said in `expectOneOf`.
 */
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import {
  lstat,
  mkdir,
  readdir,
  readFile,
  readlink,
  rm,
  symlink,
  writeFile,
} from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeEach, describe, expect, test, vi } from 'vitest';
import type { FileFaults } from './testing/file-faults.ts';

const { box } = vi.hoisted(() => ({ box: {} as { faults: FileFaults } }));
vi.mock('node:fs/promises', async (importOriginal) => {
  const { makeFileFaults } = await import('./testing/file-faults.ts');
  box.faults = makeFileFaults(await importOriginal());
  return box.faults.files;
});

type Files = Readonly<Record<string, string>>;

const noFault = () => undefined;
/** In memory where that can be: each exchange writes a hundred small files. */
const fast = existsSync('/dev/shm') ? '/dev/shm' : tmpdir();
const work = mkdtempSync(path.join(fast, 'output-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));
const parent = path.join(work, 'host');
const out = path.join(parent, 'site');
const made = path.join(work, 'made');

/** What the old build wrote, what it wrote and the new one does not, and what others put beside it. */
const oldBuild: Files = {
  'index.html': 'old',
  'assets/old.js': 'old',
  'images/a.png': 'old',
  'gone/deep/b.js': 'old',
};
const newBuild: Files = { 'index.html': 'new', 'assets/new.js': 'new', '2.html': 'new' };
const others: Files = {
  CNAME: 'course.example',
  '.git/HEAD': 'ref: refs/heads/pages',
  '.git/objects/aa/bb': 'object',
  '.git/link': '-> HEAD',
  'notes.txt': 'by hand',
  'images/mine.png': 'by hand',
  'downloads/deep/sheet.pdf': 'by hand',
  'downloads/empty/': '',
};

async function write(folder: string, files: Files): Promise<void> {
  await mkdir(folder, { recursive: true });
  for (const [file, content] of Object.entries(files)) {
    const full = path.join(folder, file);
    await mkdir(path.dirname(full), { recursive: true });
    if (file.endsWith('/')) await mkdir(full);
    else if (content.startsWith('-> ')) await symlink(content.slice(3), full);
    else await writeFile(full, content);
  }
}

/** Every file below a folder with its content; undefined where there is no folder. */
async function read(folder: string): Promise<Files | undefined> {
  const names = await readdir(folder, { recursive: true }).catch(() => undefined);
  if (names === undefined) return undefined;
  const files: Record<string, string> = {};
  for (const name of names.sort()) {
    const full = path.join(folder, name);
    const found = await lstat(full);
    if (found.isDirectory() && (await readdir(full)).length === 0) files[`${name}/`] = '';
    if (found.isSymbolicLink()) files[name] = `-> ${await readlink(full)}`;
    else if (found.isFile() && name !== 'linewright.json')
      files[name] = await readFile(full, 'utf8');
  }
  return files;
}

type Room = typeof import('./index.ts');

/** The room of the process that runs: undefined when that was cut short or a new test begins. */
let running: Room | undefined;

/** The room as a new process has it, which knows nothing of what was cut short. */
async function fresh(): Promise<Room> {
  vi.resetModules();
  running = await import('./index.ts');
  return running;
}

/** One process may build several times, until it is cut short: loading the room is what takes long here. */
const current = async () => running ?? (await fresh());

const starts = {
  'no output yet': async () => {},
  'an empty folder': () => mkdir(out, { recursive: true }),
  'an earlier build, and what others put there': async () => {
    const { replaceFolder } = await current();
    await write(made, oldBuild);
    await replaceFolder(made, out);
    await write(out, others);
  },
};
type Start = keyof typeof starts;

async function begin(start: Start): Promise<void> {
  box.faults.plan(noFault);
  await rm(parent, { recursive: true, force: true });
  await rm(made, { recursive: true, force: true });
  await starts[start]();
  await write(made, newBuild);
}

/** What stands at `out` after all went well, or after nothing happened. */
const before: Readonly<Record<Start, Files | undefined>> = {
  'no output yet': undefined,
  'an empty folder': {},
  'an earlier build, and what others put there': { ...oldBuild, ...others },
};
const after = (start: Start): Files =>
  start === 'an earlier build, and what others put there' ? { ...newBuild, ...others } : newBuild;

/** The old output whole or the new one whole, each with all that others put there. */
async function expectOneOf(start: Start, when: string): Promise<void> {
  const found = await read(out);
  const isNew = found !== undefined && '2.html' in found;
  expect(found, when).toEqual(isNew ? after(start) : before[start]);
}

async function expectNothingBeside(when: string): Promise<void> {
  expect(await readdir(parent), when).toEqual(['site']);
}

/** The next run replaces the output as if nothing had happened, and leaves nothing behind. */
async function expectGoesOn(start: Start, when: string): Promise<void> {
  await rm(made, { recursive: true, force: true });
  await write(made, newBuild);
  expect(await exchange(), when).toBe('done');
  expect(await read(out), when).toEqual(after(start));
  await expectNothingBeside(when);
}

async function exchange(): Promise<'killed' | 'done' | Error> {
  const { prepareOutput, replaceFolder } = await current();
  const run = prepareOutput(out).then((real) => replaceFolder(made, real));
  const ended = await Promise.race([
    run.then(
      () => 'done' as const,
      (error: Error) => error,
    ),
    box.faults.killed(),
  ]);
  if (ended !== 'done') running = undefined;
  return ended;
}

/** How many calls a run without faults makes. */
async function countCalls(start: Start): Promise<number> {
  await begin(start);
  box.faults.plan(noFault);
  expect(await exchange()).toBe('done');
  return box.faults.calls.length;
}

beforeEach(() => {
  running = undefined;
  box.faults?.plan(noFault);
});

for (const start of Object.keys(starts) as Start[]) {
  describe(start, () => {
    test('is replaced, and only what the build wrote goes', async () => {
      await begin(start);
      expect(await exchange()).toBe('done');
      expect(await read(out)).toEqual(after(start));
      await expectNothingBeside('');
    });

    for (const kind of ['killed before', 'killed within'] as const) {
      test(`${kind} any call: the next process finds the old or the new output whole`, async () => {
        const calls = await countCalls(start);
        expect(calls).toBeGreaterThan(8);
        for (let at = 1; at <= calls; at++) {
          await begin(start);
          box.faults.plan((_, number) => (number === at ? kind : undefined));
          expect(await exchange()).toBe('killed');
          const when = `${kind} call ${at}: ${box.faults.calls.at(-1)}`;
          box.faults.plan(noFault);
          // A host serves nothing only between the two moves, and then both stand beside.
          const beside = await readdir(parent).catch(() => []);
          if (await read(out)) await expectOneOf(start, when);
          else if (before[start]) expect(beside.length, when).toBe(2);
          const { settleOutput } = await current();
          await settleOutput(out);
          await expectOneOf(start, when);
          const left = (await readdir(parent).catch(() => [])).filter((name) => name !== 'site');
          expect(left, when).toEqual([]);
          await expectGoesOn(start, when);
        }
      });
    }

    test('an error at any call: the old or the new output stands whole at once', async () => {
      const calls = await countCalls(start);
      for (let at = 1; at <= calls; at++) {
        await begin(start);
        box.faults.plan((_, number) => (number === at ? 'EIO' : undefined));
        const ended = await exchange();
        const when = `EIO at call ${at}: ${box.faults.calls[at - 1]}`;
        box.faults.plan(noFault);
        await expectOneOf(start, when);
        if (ended === 'done') expect(await read(out), when).toEqual(after(start));
        await expectGoesOn(start, when);
      }
    });
  });
}

const full = 'an earlier build, and what others put there';

test('what lies on another device is copied; a kill within the copy loses nothing', async () => {
  const faultOf = (call: string) => (call.startsWith(`rename ${made} `) ? 'EXDEV' : undefined);
  await begin(full);
  box.faults.plan(faultOf);
  expect(await exchange()).toBe('done');
  expect(await read(out)).toEqual(after(full));

  await begin(full);
  box.faults.plan((call) => (call.startsWith('cp ') ? 'killed within' : faultOf(call)));
  expect(await exchange()).toBe('killed');
  box.faults.plan(noFault);
  await expectOneOf(full, 'after the kill');
  await expectGoesOn(full, 'after the kill');
});

test('a disk that refuses the second move and the way back loses nothing', async () => {
  await begin(full);
  box.faults.plan((call) => (call.endsWith(` -> ${out}`) ? 'EIO' : undefined));
  expect(await exchange()).toBeInstanceOf(Error);
  box.faults.plan(noFault);
  const { settleOutput } = await current();
  await settleOutput(out);
  expect(await read(out)).toEqual(before[full]);
});

describe('what an earlier run left', () => {
  test('is not touched while that run goes on', async () => {
    await begin(full);
    const other = path.join(parent, `.site.new-${process.ppid}-0a1b2c3d`);
    await write(other, { 'index.html': 'in the making' });
    expect(await exchange()).toBe('done');
    expect(await read(other)).toEqual({ 'index.html': 'in the making' });
  });

  test('is not touched while this process is at it', async () => {
    await begin(full);
    const { replaceFolder, settleOutput } = await fresh();
    box.faults.plan((call) => (call.startsWith(`rename ${out} `) ? 'killed before' : undefined));
    void replaceFolder(made, out);
    await box.faults.killed();
    const beside = await readdir(parent);
    expect(beside).toHaveLength(2);
    await settleOutput(out);
    expect(await readdir(parent)).toEqual(beside);
  });

  test('of the first edition, killed before it had moved the files of the host', async () => {
    await begin('no output yet');
    await write(out, newBuild);
    await writeFile(path.join(out, 'linewright.json'), '{"generator":"linewright"}');
    const old = path.join(parent, '.site.old-0a1b2c3d');
    await write(old, { ...oldBuild, CNAME: 'course.example', '.git/HEAD': 'ref' });
    await writeFile(path.join(old, 'linewright.json'), '{"generator":"linewright"}');
    const { settleOutput } = await current();
    await settleOutput(out);
    expect(await read(out)).toEqual({ ...newBuild, CNAME: 'course.example', '.git/HEAD': 'ref' });
    await expectNothingBeside('');
  });

  test('is not decided where something else now stands in its place', async () => {
    await begin('no output yet');
    await write(out, { 'thesis.txt': 'years of work' });
    for (const what of ['old', 'new']) {
      await write(path.join(parent, `.site.${what}-0a1b2c3d`), oldBuild);
    }
    expect(await exchange()).toMatchObject({ message: expect.stringContaining('was cut short') });
    expect(await read(out)).toEqual({ 'thesis.txt': 'years of work' });
    expect((await readdir(parent)).length).toBe(3);
  });
});

describe('files that no build wrote', () => {
  test('stop a build that makes something of their name, unless it is the same', async () => {
    await begin(full);
    await write(out, { '2.html': 'by hand' });
    expect(await exchange()).toMatchObject({
      message: `${out}/2.html was written by no build, and the new one makes something of that name`,
    });
    expect(await read(out)).toEqual({ ...before[full], '2.html': 'by hand' });
    await writeFile(path.join(out, '2.html'), 'new');
    await write(made, newBuild);
    expect(await exchange()).toBe('done');
    expect(await read(out)).toEqual(after(full));
  });

  test('are all that a first edition did not make anew, since it kept no list', async () => {
    await begin(full);
    await writeFile(path.join(out, 'linewright.json'), '{"generator":"linewright"}');
    expect(await exchange()).toBe('done');
    expect(await read(out)).toEqual({ ...oldBuild, ...after(full) });
  });
});
