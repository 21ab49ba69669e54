#!/usr/bin/env node
// Checks the version of Node before anything else is loaded: an old one cannot parse the program.
import { nodeFault } from './node-version.ts';

const fault = nodeFault(process.versions.node);
if (fault === undefined) {
  import('./run.ts');
} else {
  process.stderr.write(`${fault}\n`);
  process.exitCode = 2;
}
