/**
 * `npm run bench:lighthouse`: the scores of the example course's first chapter in Lighthouse
 * (Apache-2.0, from the npm registry), served compressed, as a phone and as a desktop.
 *
 * Lighthouse takes the durations of tasks from the clock and reckons them four times as long for a
 * phone. Where the processes of the browser share few cores, a task also waits, and the wait counts
 * four times too. So each run is scored a second time from its own trace, with the processor time of
 * each task in the place of its duration. Nothing here is asserted.
 */
import { execFile, execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import path from 'node:path';
import { promisify } from 'node:util';
import { chromiumArguments } from '../setup/chromium-arguments.ts';
import { findChromium } from '../setup/find-chromium.ts';
import { serveCompressed } from './serve-compressed.ts';

const lighthouse = 'lighthouse@13.5.0';
const root = path.resolve(import.meta.dirname, '../..');
const work = mkdtempSync(path.join(tmpdir(), 'linewright-lighthouse-'));
const chromeFlags = ['--headless', ...chromiumArguments].join(' ');
/** Chromium holds the first frame back for one or two whole seconds on some machines. */
const unheld = `${chromeFlags} --disable-features=PaintHolding`;

const runs = [
  { name: 'phone', args: [], flags: chromeFlags, times: 3 },
  { name: 'phone, first frame not held back', args: [], flags: unheld, times: 3 },
  { name: 'desktop', args: ['--preset=desktop'], flags: chromeFlags, times: 1 },
];

interface TraceEvent {
  readonly ph: string;
  /** Microseconds by the clock, and of the thread's processor time. */
  dur?: number;
  readonly tdur?: number;
}

interface Report {
  readonly runtimeError?: { readonly message: string };
  readonly categories: Readonly<Record<string, { readonly title: string; readonly score: number }>>;
  readonly audits: Readonly<
    Record<string, { readonly details?: { readonly items?: readonly Record<string, number>[] } }>
  >;
}

/** Not synchronously: the server runs in this process. */
const execute = promisify(execFile);

async function run(args: readonly string[]): Promise<string> {
  const report = path.join(work, 'report.json');
  const command = ['--yes', lighthouse, ...args, '--quiet', '--output=json'];
  await execute('npx', [...command, `--output-path=${report}`], {
    cwd: work,
    env: { ...process.env, CHROME_PATH: findChromium() },
  });
  const read: Report = JSON.parse(readFileSync(report, 'utf8'));
  if (read.runtimeError !== undefined) throw new Error(read.runtimeError.message);
  const scores = Object.values(read.categories).map(
    ({ title, score }) => `${title} ${Math.round(score * 100)}`,
  );
  const [metrics = {}] = read.audits.metrics?.details?.items ?? [];
  const milliseconds = (name: string) => `${Math.round(metrics[name] ?? Number.NaN)} ms`;
  return [
    ...scores,
    `first paint ${milliseconds('firstContentfulPaint')}`,
    `largest paint ${milliseconds('largestContentfulPaint')}`,
    `blocked ${milliseconds('totalBlockingTime')}`,
    `speed index ${milliseconds('speedIndex')}`,
    `shift ${metrics.cumulativeLayoutShift}`,
  ].join(', ');
}

/** Puts processor time in the place of each task's duration. */
function countProcessorTime(artifacts: string): void {
  const file = path.join(artifacts, 'trace.json');
  const trace: { readonly traceEvents: TraceEvent[] } = JSON.parse(readFileSync(file, 'utf8'));
  for (const event of trace.traceEvents) {
    if (event.ph === 'X' && event.tdur !== undefined && event.tdur < (event.dur ?? 0)) {
      event.dur = event.tdur;
    }
  }
  writeFileSync(file, JSON.stringify(trace));
}

if (findChromium() === undefined) throw new Error('no Chromium was found');
const site = path.join(work, 'site');
const cli = path.join(root, 'dist/cli/main.js');
execFileSync(process.execPath, [cli, 'build', path.join(root, 'demo-course'), '--out', site]);
const server = await serveCompressed(site);
try {
  console.log(`${lighthouse}, node ${process.version}, ${cpus().length} cores`);
  const address = `${server.address}isolated-pawn.html`;
  for (const { name, args, flags, times } of runs) {
    console.log(`\n${name}`);
    for (let time = 0; time < times; time++) {
      const artifacts = path.join(work, 'artifacts');
      rmSync(artifacts, { recursive: true, force: true });
      const scored = await run([address, `-GA=${artifacts}`, ...args, `--chrome-flags=${flags}`]);
      console.log(`  by the clock       ${scored}`);
      countProcessorTime(artifacts);
      const again = await run([address, `-A=${artifacts}`, ...args]);
      console.log(`  by processor time  ${again}`);
    }
  }
} finally {
  server.close();
  rmSync(work, { recursive: true, force: true });
}
