/** The fuzzer: `npm run fuzz -- --minutes 2`. */
import { Bench } from './bench.ts';
import { runFuzzer } from './run-fuzzer.ts';

const bench = new Bench();
process.exitCode = await runFuzzer(process.argv.slice(2), { bench, print: console.log });
await bench.close();
