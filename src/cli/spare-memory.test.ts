import { execFileSync } from 'node:child_process';
import { expect, test } from 'vitest';

test('the room for new objects grows again where V8 has shrunk it, and no farther than it may', () => {
  const module = new URL('spare-memory.ts', import.meta.url);
  const code = `
    import { getHeapSpaceStatistics } from 'node:v8';
    import { keepRoom, spareMemory } from '${module}';
    const size = () => getHeapSpaceStatistics().find((s) => s.space_name === 'new_space').space_size / 2 ** 20;
    spareMemory(1000, 'alone');
    gc({ type: 'major', flavor: 'last-resort' });
    const shrunk = size();
    let largest = shrunk;
    const list = [];
    for (let at = 0; at < 3_000_000; at += 1) {
      list.push({ at });
      if (at % 10_000 > 0) continue;
      keepRoom(1000);
      largest = Math.max(largest, size());
    }
    console.log(JSON.stringify({ shrunk, largest }));`;
  const args = ['--expose-gc', '--input-type=module', '--eval', code];
  const sizes = JSON.parse(execFileSync(process.execPath, args, { encoding: 'utf8' }));
  expect(sizes.shrunk).toBeLessThan(8);
  expect(sizes.largest).toBeGreaterThanOrEqual(32);
  // V8 counts both halves of it while it moves from one to the other.
  expect(sizes.largest).toBeLessThan(128);
});
