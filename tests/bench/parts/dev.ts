import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { setTimeout } from 'node:timers/promises';
import { courseOf, editChapter, middleChapter } from '../courses.ts';
import { cli, environment, median } from '../measure.ts';
import { heading, row } from '../report.ts';

const port = 4987;
const edits = 7;

/** From the moment a chapter is saved to the moment its page has the change, in a running `dev`. */
export async function benchDev(work: string): Promise<void> {
  heading('saved to seen in dev (on the clock, median of 7)');
  for (const [chapters, goal] of [
    [200, 300],
    [1000, 1000],
  ] as const) {
    const course = await courseOf(chapters, work);
    const child = spawn(process.execPath, [cli, 'dev', course.folder, '--port', String(port)], {
      env: environment({ work }),
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    try {
      await until(child, 'follows your files');
      const page = `http://localhost:${port}/${middleChapter(chapters).slice(5, -3)}.html`;
      await fetch(page);
      const times: number[] = [];
      const costs: number[] = [];
      for (let edit = 0; edit < edits; edit += 1) {
        const [before, start] = [processorOf(child), performance.now()];
        await seen(page, editChapter(course, chapters));
        times.push(performance.now() - start);
        costs.push(processorOf(child) - before);
        await setTimeout(1000);
      }
      const wall = median(times) / 1000;
      row(`${chapters} chapters`, { processor: median(costs), wall }, [
        { value: wall * 1000, unit: 'ms', goal },
      ]);
    } finally {
      child.kill();
      // Its usage is noted when it ends, and is no other program's.
      await once(child, 'exit');
    }
  }
}

async function until(child: ChildProcess, words: string): Promise<void> {
  await new Promise<void>((resolve, reject) => {
    let said = '';
    child.stdout?.on('data', (chunk) => {
      said = `${said}${chunk}`.slice(-2000);
      if (said.includes(words)) resolve();
    });
    child.once('exit', () => reject(new Error(`dev ended: ${said}`)));
  });
}

async function seen(page: string, word: string): Promise<void> {
  const end = performance.now() + 60_000;
  while (performance.now() < end) {
    const text = await (await fetch(page)).text();
    if (text.includes(word)) return;
    await setTimeout(10);
  }
  throw new Error(`${page} never had ${word}`);
}

/** Seconds of the processor of a running process by Linux's /proc; elsewhere nothing is known. */
function processorOf({ pid }: ChildProcess): number {
  try {
    const fields = readFileSync(`/proc/${pid}/stat`, 'utf8')
      .replace(/^.*\) /, '')
      .split(' ');
    return (Number(fields[11]) + Number(fields[12])) / 100;
  } catch {
    return Number.NaN;
  }
}
