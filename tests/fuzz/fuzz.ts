/**
 * The fuzzer: `npm run fuzz -- --minutes 2`. Prints what it was started with, every kind of failure
 * with a file that replays it, and a closing line; ends with 1 if anything failed.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { Bench } from './bench.ts';
import { type Failure, type FuzzCase, signatureOf } from './case.ts';
import { minimise } from './minimise.ts';

const { values } = parseArgs({
  options: {
    minutes: { type: 'string', default: '2' },
    cases: { type: 'string' },
    seed: { type: 'string' },
    from: { type: 'string', default: '0' },
    out: { type: 'string', default: 'fuzz-failures' },
    replay: { type: 'string' },
  },
});

interface SavedCase extends FuzzCase {
  readonly failure: Failure;
  readonly seed: number;
  readonly number: number;
}

/** So many kinds of failures are made small and saved: of more, most are one fault. */
const mostKinds = 20;

const bench = new Bench();
process.exitCode =
  values.replay === undefined ? await fuzz() : await replay(path.resolve(values.replay));
await bench.close();

async function fuzz(): Promise<number> {
  // A replay needs none of it, and it takes seconds to load.
  const { makeCase } = await import('./make/make-case.ts');
  const seed = Number(values.seed ?? Date.now() % 1_000_000);
  const from = Number(values.from);
  const end = values.cases === undefined ? Number.POSITIVE_INFINITY : from + Number(values.cases);
  const deadline =
    values.cases === undefined
      ? Date.now() + Number(values.minutes) * 60_000
      : Number.POSITIVE_INFINITY;
  console.log(`Seed ${seed}. The same cases again: npm run fuzz -- --seed ${seed}`);
  const kinds = new Map<string, number>();
  let failed = 0;
  let number = from;
  for (; number < end && Date.now() < deadline; number++) {
    const { tried, failures } = await bench.try(makeCase(seed, number));
    if (failures.length > 0) failed += 1;
    for (const failure of failures) {
      const kind = signatureOf(failure);
      const before = kinds.get(kind) ?? 0;
      kinds.set(kind, before + 1);
      if (before > 0 || kinds.size > mostKinds) continue;
      const smaller = await minimise(tried, (each) => failsSo(each, kind), triesOf(failure));
      report({ ...smaller, failure, seed, number }, kind, kinds.size);
    }
  }
  const count = (number - from).toLocaleString('en');
  const of = kinds.size === 0 ? '' : ` of ${kinds.size} ${kinds.size === 1 ? 'kind' : 'kinds'}`;
  for (const [kind, times] of kinds) if (times > 1) console.log(`${times} times ${kind}`);
  console.log(`${count} cases, ${failed} failures${of}`);
  return failed === 0 ? 0 : 1;
}

async function failsSo(tried: FuzzCase, kind: string): Promise<boolean> {
  return (await bench.try(tried)).failures.some((failure) => signatureOf(failure) === kind);
}

/** Each try of a case that hangs takes as long as a case may. */
function triesOf({ oracle }: Failure): number | undefined {
  return oracle === 'comes back' ? 40 : undefined;
}

function report(saved: SavedCase, kind: string, index: number): void {
  const name = kind
    .replace(/[^a-zA-Z]+/g, '-')
    .slice(0, 60)
    .toLowerCase();
  const file = path.join(values.out, `${name}-${saved.seed}-${saved.number}-${index}.json`);
  mkdirSync(values.out, { recursive: true });
  writeFileSync(file, `${JSON.stringify(saved, null, 2)}\n`);
  console.log(`\nCase ${saved.number} fails: ${saved.failure.oracle}`);
  console.log(`  ${saved.failure.message.split('\n').slice(0, 6).join('\n  ')}`);
  console.log(`  npm run fuzz -- --replay ${file}`);
}

async function replay(file: string): Promise<number> {
  const { target, files } = JSON.parse(readFileSync(file, 'utf8')) as SavedCase;
  for (const [name, text] of Object.entries(files))
    console.log(`--- ${name}\n${JSON.stringify(text)}`);
  const { failures } = await bench.try({ target, files });
  for (const { oracle, message } of failures) console.log(`\n${oracle}: ${message}`);
  console.log(failures.length === 0 ? '\nIt holds now.' : `\n${failures.length} failures`);
  return failures.length === 0 ? 0 : 1;
}
