import { readFileSync } from 'node:fs';
import { transform } from 'esbuild';
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

test('what is loaded before is two files that Node 12 can read', async () => {
  for (const file of ['main', 'node-version']) {
    const code = readFileSync(new URL(`dist/cli/${file}.js`, root), 'utf8');
    const imports = [...code.matchAll(/^import .* from '(.*)'/gm)].map(([, from]) => from);
    expect(imports).toEqual(file === 'main' ? ['./node-version.js'] : []);
    // Where the newest syntax is made that of Node 12 and nothing changes, it was that already.
    const [now, then] = await Promise.all([
      transform(code, { target: 'esnext' }),
      transform(code, { target: 'node12.20' }),
    ]);
    expect(then.code).toBe(now.code);
  }
});
