import { expect, test } from 'vitest';
import { Recent } from './recent.ts';

test('the latest entries are kept, and memory stays bounded', () => {
  const recent = new Recent<number, string>(10);
  for (let key = 0; key < 1000; key++) {
    recent.set(key, `value ${key}`);
    expect(recent.size).toBeLessThanOrEqual(20);
  }
  for (let key = 990; key < 1000; key++) expect(recent.get(key)).toBe(`value ${key}`);
  expect(recent.get(0)).toBeUndefined();
});

test('an entry that is asked for stays', () => {
  const recent = new Recent<number, string>(10);
  recent.set(-1, 'kept');
  for (let key = 0; key < 1000; key++) {
    recent.set(key, '');
    expect(recent.get(-1)).toBe('kept');
  }
});
