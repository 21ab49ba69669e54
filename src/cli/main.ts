#!/usr/bin/env node
// Checks the version of Node before anything else is loaded: an old one cannot parse the program.
import { nodeFault } from './node-version.ts';

const fault = nodeFault(process.versions.node);
if (fault === undefined) {
  // Beside the program: who can write there can change the program too. Where nobody can, nothing is kept.
  const { fileURLToPath } = process.getBuiltinModule('node:url');
  const compiled = fileURLToPath(new URL('../../dist/compiled', import.meta.url));
  process.getBuiltinModule('node:module').enableCompileCache(compiled);
  import('./run.ts');
} else {
  process.stderr.write(`${fault}\n`);
  process.exitCode = 2;
}
