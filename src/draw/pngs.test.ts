import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { drawBoard } from './board.ts';
import { makePng } from './png.ts';
import { makePngs, type PngJob } from './pngs.ts';

const jobs = Array.from({ length: 12 }, (_, index) => ({
  svg: drawBoard({ placement: '8/8/8/3k4/8/3K4/8/8', marks: [`a${1 + (index % 8)}`] }),
  width: 100 + index,
}));
const direct = jobs.map((job) => makePng(job.svg, job));

async function run(options: Parameters<typeof makePngs>[2], list: readonly PngJob[] = jobs) {
  const pngs: Uint8Array[] = [];
  const counts = await makePngs(
    list,
    (index, png) => {
      pngs[index] = png;
    },
    options,
  );
  return { counts, pngs: pngs.map((png) => Buffer.from(png)) };
}

const same = direct.map((png) => Buffer.from(png));

test('threads draw the same bytes as one call, each in its place', async () => {
  expect(await run({ threads: 2 })).toEqual({ counts: { drawn: 12, cached: 0 }, pngs: same });
});

test('an SVG that cannot be read ends the work with its reason', async () => {
  const broken = [...jobs, { svg: '<svg', width: 100 }];
  await expect(run({ threads: 2 }, broken)).rejects.toThrow('the SVG cannot be drawn');
  await expect(run({ threads: 1 }, broken)).rejects.toThrow('the SVG cannot be drawn');
});

test('what onDone throws ends the work', async () => {
  const full = () => {
    throw new Error('no space left');
  };
  await expect(makePngs(jobs, full, { threads: 2 })).rejects.toThrow('no space left');
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
    const { pngs } = await run({ cache: folder, threads: 2 }, list);
    expect(await run({ cache: folder, threads: 2 }, list)).toEqual({
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
