import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { nodeFault, oldestNode } from './node-version.ts';

const root = new URL('../../', import.meta.url);

test('is what package.json asks for', () => {
  const { engines } = JSON.parse(readFileSync(new URL('package.json', root), 'utf8'));
  expect(`>=${oldestNode}`).toBe(`${engines.node}.0`);
});

test.each(['0.10.48', '12.17.0', '18.20.4', '20.19.2', '22.11.0', '22.2.0'])(
  '%s is too old, and the sentence says what to do',
  (version) => {
    expect(nodeFault(version)).toMatch(
      new RegExp(
        `^This is Node ${version}, and Linewright needs Node ${oldestNode} or newer: .*\\.$`,
      ),
    );
  },
);

test.each(['22.12.0', '22.21.1', '23.0.0-nightly2024', '24.0.0', '100.1.0'])(
  '%s will do',
  (version) => {
    expect(nodeFault(version)).toBeUndefined();
  },
);
