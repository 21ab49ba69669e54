#!/usr/bin/env node
// Nothing but the version of Node is looked at before the program is loaded: an old one cannot read it.
import { setFlagsFromString } from 'node:v8';
import { nodeFault } from './node-version.ts';

const fault = nodeFault(process.versions.node);
if (fault === undefined) {
  // Most of what reading and rendering a course make is soon done with. With more room for what is new V8
  // copies less of it: a seventh of the processor time of a thousand chapters, measured.
  setFlagsFromString('--max-semi-space-size=64');
  setFlagsFromString('--min-semi-space-size=16');
  import('./run.ts');
} else {
  process.stderr.write(`${fault}\n`);
  process.exitCode = 2;
}
