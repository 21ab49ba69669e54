import { execFileSync } from 'node:child_process';
import {
  mkdir,
  mkdtemp,
  readdir,
  readFile,
  rename,
  rm,
  symlink,
  writeFile,
} from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { drawBoard } from '../board.ts';
import type { PngJob } from './png.ts';
import { makePng } from './png.ts';
import { pngCache } from './png-cache.ts';
import { makePngs } from './pngs.ts';

const jobs = Array.from({ length: 12 }, (_, index) => ({
  svg: drawBoard({ placement: '8/8/8/3k4/8/3K4/8/8', marks: [`a${1 + (index % 8)}`] }),
  width: 100 + index,
}));
const direct = jobs.map((job) => makePng(job.svg, job));

/** Within this process, unless said: to start others takes longer than to draw. */
async function run(options: Parameters<typeof makePngs>[2], list: readonly PngJob[] = jobs) {
  const pngs: Uint8Array[] = [];
  const counts = await makePngs(
    list,
    (index, png) => {
      pngs[index] = png;
    },
    { processes: 1, ...options },
  );
  return { counts, pngs: pngs.map((png) => Buffer.from(png)) };
}

const same = direct.map((png) => Buffer.from(png));

test('processes draw the same bytes as one call, each in its place; they are announced', async () => {
  const onProcesses = vi.fn();
  const drawn = { counts: { drawn: 12, cached: 0 }, pngs: same };
  expect(await run({ processes: 1, onProcesses })).toEqual(drawn);
  expect(onProcesses).not.toHaveBeenCalled();
  expect(await run({ processes: 2, onProcesses })).toEqual(drawn);
  expect(onProcesses).toHaveBeenCalledOnce();
});

test('an SVG that cannot be read ends the work with its reason', async () => {
  const broken = [...jobs, { svg: '<svg', width: 100 }];
  await expect(run({ processes: 2 }, broken)).rejects.toThrow('the SVG cannot be drawn');
  await expect(run({ processes: 1 }, broken)).rejects.toThrow('the SVG cannot be drawn');
});

test('what onDone throws ends the work', async () => {
  const full = () => {
    throw new Error('no space left');
  };
  await expect(makePngs(jobs, full, { processes: 2 })).rejects.toThrow('no space left');
});

describe('the cache', () => {
  let folder = '';
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'draw-'));
  });
  afterEach(() => rm(folder, { recursive: true }));

  test('gives the second build the same bytes without drawing', async () => {
    await run({ cache: folder });
    expect(await run({ cache: folder })).toEqual({
      counts: { drawn: 0, cached: 12 },
      pngs: same,
    });
  });

  test('leaves nothing but finished images', async () => {
    await run({ cache: folder });
    const names = await readdir(folder);
    expect(names).toHaveLength(12);
    for (const name of names) expect(name).toMatch(/^[0-9a-f]{64}\.png$/);
  });

  test('draws a damaged image again and mends the file', async () => {
    await run({ cache: folder });
    const [first = '', second = ''] = await readdir(folder);
    const whole = await readFile(join(folder, second));
    await writeFile(join(folder, first), 'not an image');
    await writeFile(join(folder, second), whole.subarray(0, whole.length - 20));
    expect(await run({ cache: folder })).toEqual({
      counts: { drawn: 2, cached: 10 },
      pngs: same,
    });
    expect((await readFile(join(folder, second))).equals(whole)).toBe(true);
  });

  /** Puts what was drawn already into the cache, without drawing; the entries in the order of jobs. */
  async function fill(count = jobs.length): Promise<string[]> {
    const cache = await pngCache(folder);
    const entries: string[] = [];
    for (const [index, job] of jobs.slice(0, count).entries()) {
      await cache.write(job, direct[index] ?? new Uint8Array());
      entries.push(...(await readdir(folder)).filter((name) => !entries.includes(name)));
    }
    return entries.map((name) => join(folder, name));
  }

  test('draws again what lies under the name of another picture, and mends the file', async () => {
    const two = jobs.slice(0, 2);
    const [first = '', second = ''] = await fill(2);
    const right = await readFile(first);
    for (const wrong of [await readFile(second), Buffer.from(direct[1] ?? ''), Buffer.from('')]) {
      await writeFile(first, wrong);
      expect(await run({ cache: folder }, two)).toEqual({
        counts: { drawn: 1, cached: 1 },
        pngs: same.slice(0, 2),
      });
      expect((await readFile(first)).equals(right)).toBe(true);
    }
  });

  test('tells any changed or missing byte', async () => {
    const [job] = jobs;
    if (!job) throw new Error('there are jobs');
    const small = { ...job, width: 16 };
    const [png] = (await run({ cache: folder }, [small])).pngs;
    const [name = ''] = await readdir(folder);
    const file = join(folder, name);
    const whole = await readFile(file);
    const cache = await pngCache(folder);
    for (let at = 0; at < whole.length; at++) {
      const damaged = Buffer.from(whole);
      damaged[at] = (damaged[at] ?? 0) ^ 1;
      await writeFile(file, damaged);
      expect(await cache.read(small), `byte ${at} changed`).toBeUndefined();
      await writeFile(file, whole.subarray(0, at));
      expect(await cache.read(small), `cut at ${at}`).toBeUndefined();
    }
    await writeFile(file, Buffer.concat([whole, Buffer.from('x')]));
    expect(await cache.read(small)).toBeUndefined();
    await writeFile(file, whole);
    expect(Buffer.from((await cache.read(small)) ?? '')).toEqual(png);
  });

  test('with a key takes nothing that was kept without it, or with another', async () => {
    const [job] = jobs;
    if (!job) throw new Error('there are jobs');
    const png = direct[0] ?? new Uint8Array();
    const [none, one, other] = await Promise.all(
      ['', 'one', 'other'].map((secret) => pngCache(folder, secret)),
    );
    await none?.write(job, png);
    expect(await none?.read(job)).toBeDefined();
    expect(await one?.read(job)).toBeUndefined();
    await one?.write(job, png);
    expect(await one?.read(job)).toBeDefined();
    expect(await none?.read(job)).toBeUndefined();
    expect(await other?.read(job)).toBeUndefined();
  });

  test('neither waits for what stands in it nor writes through it', async () => {
    const [pipe = '', link = '', device = '', directory = '', moved = ''] = await fill();
    const other = join(folder, 'other');
    await writeFile(other, 'precious');
    for (const entry of [pipe, link, device, directory]) await rm(entry);
    execFileSync('mkfifo', [pipe]);
    await symlink(other, link);
    await symlink('/dev/zero', device);
    await mkdir(join(directory, 'within'), { recursive: true });
    // A sound entry, but by a link.
    await rename(moved, join(folder, 'moved'));
    await symlink(join(folder, 'moved'), moved);
    for (const drawn of [5, 1]) {
      expect(await run({ cache: folder })).toEqual({
        counts: { drawn, cached: 12 - drawn },
        pngs: same,
      });
    }
    expect(await readFile(other, 'utf8')).toBe('precious');
    expect((await readdir(folder)).filter((name) => name.endsWith('.draft'))).toEqual([]);
  });

  test('serves several runs at once', async () => {
    const runs = await Promise.all([1, 2, 3].map(() => run({ cache: folder })));
    for (const { pngs } of runs) expect(pngs).toEqual(same);
    expect((await run({ cache: folder })).counts).toEqual({ drawn: 0, cached: 12 });
  });

  test('draws a late picture once, and tells it apart by its key', async () => {
    let drawn = 0;
    const late = (key: string): PngJob => ({
      width: 100,
      key,
      draw: async () => {
        drawn += 1;
        return drawBoard({ placement: '8/8/8/3k4/8/3K4/8/8' });
      },
    });
    const list = [late('one'), ...jobs];
    const { pngs } = await run({ cache: folder, processes: 2 }, list);
    expect(await run({ cache: folder, processes: 2 }, list)).toEqual({
      counts: { drawn: 0, cached: 13 },
      pngs,
    });
    expect(drawn).toBe(1);
    expect((await run({ cache: folder }, [late('two')])).counts.drawn).toBe(1);
  });

  test('tells apart size and number of colours', async () => {
    const [job] = jobs;
    if (!job) throw new Error('there are jobs');
    const kinds = [job, { ...job, scale: 2 }, { ...job, colours: 4 }];
    expect((await run({ cache: folder }, kinds)).counts).toEqual({ drawn: 3, cached: 0 });
    expect((await run({ cache: folder }, kinds)).counts).toEqual({ drawn: 0, cached: 3 });
  });

  test('is done without where it cannot be written', async () => {
    const file = join(folder, 'a file');
    await writeFile(file, '');
    expect(await run({ cache: join(file, 'cache') })).toEqual({
      counts: { drawn: 12, cached: 0 },
      pngs: same,
    });
  });
});
