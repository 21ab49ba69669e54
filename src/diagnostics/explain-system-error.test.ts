import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { explainSystemError } from './explain-system-error.ts';

function fault(code: string, file?: string): NodeJS.ErrnoException {
  const what = file === undefined ? 'write' : `open '${file}'`;
  const error = new Error(`${code}: no space left on device, ${what}`);
  return Object.assign(error, { code, syscall: 'write', ...(file && { path: file }) });
}

test('a full disk is named by the file, that of a copy by where it goes', () => {
  expect(explainSystemError(fault('ENOSPC', '/srv/site/index.html'))).toBe(
    'A disk is full (ENOSPC): /srv/site/index.html could not be written. Make room on it. ' +
      'An earlier output stands as it was.',
  );
  const copy = Object.assign(fault('ENOSPC', '/package/a.css'), { dest: '/srv/site/a.css' });
  expect(explainSystemError(copy)).toContain(': /srv/site/a.css could not be written.');
});

const inTemporary = path.join(tmpdir(), 'linewright-1-abcdef', 'out');
test.each([
  [inTemporary, `: ${inTemporary} could not be written`],
  [undefined, ''],
])('that of temporary files can be another one: %s', (file, named) => {
  expect(explainSystemError(fault('EDQUOT', file))).toBe(
    `A disk is full (EDQUOT)${named}. Make room on it, or set TMPDIR to a folder on another one: ` +
      `temporary files are in ${tmpdir()}. An earlier output stands as it was.`,
  );
});
