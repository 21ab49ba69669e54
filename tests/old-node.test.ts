/** The built program on a Node that cannot read it. */
import { readFileSync } from 'node:fs';
import { transform } from 'esbuild';
import { expect, test } from 'vitest';

const root = new URL('../', import.meta.url);

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
