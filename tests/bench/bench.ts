/**
 * `npm run bench`, or parts of it by name, `npm run bench -- check compare`: what the program costs, in
 * seconds of the processor of whole processes (other work on the machine changes the clock far more),
 * as ratios to the cheapest thing that does the same work, with the goal of each figure. Nothing here
 * is asserted.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import path from 'node:path';
import { benchBuild } from './parts/build.ts';
import { benchCards } from './parts/cards.ts';
import { benchCheck } from './parts/check.ts';
import { benchCompare } from './parts/compare.ts';
import { benchDev } from './parts/dev.ts';
import { benchFindings } from './parts/findings.ts';
import { benchLsp } from './parts/lsp.ts';
import { benchReading } from './parts/reading.ts';
import { benchRules } from './parts/rules.ts';
import { benchShelf } from './parts/shelf.ts';
import { sayMissed } from './report.ts';

const parts = new Map([
  ['check', benchCheck],
  ['findings', benchFindings],
  ['rules', benchRules],
  ['dev', benchDev],
  ['lsp', benchLsp],
  ['build', benchBuild],
  ['shelf', benchShelf],
  ['compare', benchCompare],
  ['cards', benchCards],
  ['reading', benchReading],
]);

const names = process.argv.slice(2);
const unknown = names.filter((name) => !parts.has(name));
if (unknown.length > 0) {
  console.error(
    `no part is named ${unknown.join(', ')}: there are ${[...parts.keys()].join(', ')}`,
  );
  process.exit(2);
}
const work = mkdtempSync(path.join(tmpdir(), 'linewright-bench-'));
console.log(`Node ${process.version}, ${availableParallelism()} cores`);
try {
  for (const [name, bench] of parts) {
    if (names.length === 0 || names.includes(name)) await bench(work);
  }
  sayMissed();
} finally {
  rmSync(work, { recursive: true, force: true });
}
