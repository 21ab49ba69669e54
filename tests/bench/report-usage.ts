/** Loaded into every process that is measured: notes at its end what it has taken. */
import { appendFileSync } from 'node:fs';
import { isMainThread } from 'node:worker_threads';

const file = process.env.BENCH_USAGE;
if (isMainThread && file) {
  process.on('exit', () => {
    const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
    const usage = { processor: (userCPUTime + systemCPUTime) / 1e6, megabytes: maxRSS / 1024 };
    appendFileSync(file, `${JSON.stringify(usage)}\n`);
  });
}
