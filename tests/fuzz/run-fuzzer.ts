import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import type { Bench } from './bench.ts';
import { type Failure, type FuzzCase, type Outcome, signatureOf } from './case.ts';
import { minimise } from './minimise.ts';

interface SavedCase extends FuzzCase {
  readonly failure: Failure;
  readonly seed: number;
  readonly number: number;
}

/** So many kinds of failures are made small and saved: of more, most are one fault. */
const mostKinds = 20;

const options = {
  minutes: { type: 'string', default: '2' },
  cases: { type: 'string' },
  seed: { type: 'string' },
  from: { type: 'string', default: '0' },
  out: { type: 'string', default: 'fuzz-failures' },
  replay: { type: 'string' },
} as const;

const read = (args: readonly string[]) => parseArgs({ args: [...args], options }).values;

/** Where cases are tried, and what takes the lines that are printed. */
export interface Fuzzing {
  readonly bench: Bench;
  readonly print: (line: string) => void;
}

/**
 * The fuzzer with the options of its command line. Prints what it was started with, every kind of failure with a file
 * that replays it, and a closing line.
 * @returns the program's exit code: 1 if anything failed.
 */
export function runFuzzer(args: readonly string[], fuzzing: Fuzzing): Promise<number> {
  const values = read(args);
  return values.replay === undefined
    ? fuzz(values, fuzzing)
    : replay(path.resolve(values.replay), fuzzing);
}

async function fuzz(values: ReturnType<typeof read>, { bench, print }: Fuzzing): Promise<number> {
  // A replay needs none of it, and it takes seconds to load.
  const { makeCase } = await import('./make/make-case.ts');
  const seed = Number(values.seed ?? Date.now() % 1_000_000);
  const from = Number(values.from);
  const end = values.cases === undefined ? Number.POSITIVE_INFINITY : from + Number(values.cases);
  const deadline =
    values.cases === undefined
      ? Date.now() + Number(values.minutes) * 60_000
      : Number.POSITIVE_INFINITY;
  print(`Seed ${seed}. The same cases again: npm run fuzz -- --seed ${seed}`);
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
      const smaller = await minimise(
        tried,
        async (each) => isOf(kind, await bench.try(each)),
        triesOf(failure),
      );
      const file = save({ ...smaller, failure, seed, number }, kind, kinds.size, values.out);
      print(report(number, failure, file));
    }
  }
  const count = (number - from).toLocaleString('en');
  const of = kinds.size === 0 ? '' : ` of ${kinds.size} ${kinds.size === 1 ? 'kind' : 'kinds'}`;
  for (const [kind, times] of kinds) if (times > 1) print(`${times} times ${kind}`);
  print(`${count} cases, ${failed} failures${of}`);
  return failed === 0 ? 0 : 1;
}

function isOf(kind: string, { failures }: Outcome): boolean {
  return failures.some((failure) => signatureOf(failure) === kind);
}

/** Each try of a case that hangs takes as long as a case may. */
function triesOf({ oracle }: Failure): number | undefined {
  return oracle === 'comes back' ? 40 : undefined;
}

function save(saved: SavedCase, kind: string, index: number, folder: string): string {
  const name = kind
    .replace(/[^a-zA-Z]+/g, '-')
    .slice(0, 60)
    .toLowerCase();
  const file = path.join(folder, `${name}-${saved.seed}-${saved.number}-${index}.json`);
  mkdirSync(folder, { recursive: true });
  writeFileSync(file, `${JSON.stringify(saved, null, 2)}\n`);
  return file;
}

function report(number: number, { oracle, message }: Failure, file: string): string {
  const lines = [...message.split('\n').slice(0, 6), `npm run fuzz -- --replay ${file}`];
  return `\nCase ${number} fails: ${oracle}\n  ${lines.join('\n  ')}`;
}

async function replay(file: string, { bench, print }: Fuzzing): Promise<number> {
  const { target, files } = JSON.parse(readFileSync(file, 'utf8')) as SavedCase;
  for (const [name, text] of Object.entries(files)) print(`--- ${name}\n${JSON.stringify(text)}`);
  const { failures } = await bench.try({ target, files });
  for (const { oracle, message } of failures) print(`\n${oracle}: ${message}`);
  print(failures.length === 0 ? '\nIt holds now.' : `\n${failures.length} failures`);
  return failures.length === 0 ? 0 : 1;
}
