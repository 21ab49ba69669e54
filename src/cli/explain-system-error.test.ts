import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { explainSystemError } from './explain-system-error.ts';

function fault(code: string, file?: string): NodeJS.ErrnoException {
  const what = file === undefined ? 'write' : `open '${file}'`;
  const error = new Error(`${code}: no space left on device, ${what}`);
  return Object.assign(error, { code, syscall: 'write', ...(file && { path: file }) });
}

const end =
  'Make room on it, or set TMPDIR to a folder on another disk. An earlier output stands as it was.';

test.each([
  [path.join(tmpdir(), 'linewright-1-abcdef', 'out'), `that of temporary files (${tmpdir()})`],
  ['/srv/site/index.html', 'that of /srv/site/index.html'],
  [undefined, `that of temporary files (${tmpdir()}) or that of the output`],
])('a full disk is named: %s', (file, disk) => {
  expect(explainSystemError(fault('ENOSPC', file))).toBe(
    `A disk is full: ${disk} (ENOSPC). ${end}`,
  );
});

test('a quota counts as a full disk', () => {
  expect(explainSystemError(fault('EDQUOT'))).toContain('(EDQUOT)');
});
