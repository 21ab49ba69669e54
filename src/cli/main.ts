#!/usr/bin/env node
// Nothing but the version of Node is looked at before the program is loaded: an old one cannot read it.
import { nodeFault } from './node-version.ts';

const fault = nodeFault(process.versions.node);
if (fault === undefined) {
  import('./run.ts');
} else {
  process.stderr.write(`${fault}\n`);
  process.exitCode = 2;
}
