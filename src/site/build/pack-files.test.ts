import { expect, test } from 'vitest';
import { packFiles, unpackFiles } from './pack-files.ts';

test('a pack has the files that went in', () => {
  const files = [
    { path: 'a/b\n"c".txt', content: Uint8Array.of(10, 0, 255) },
    { path: 'empty', content: new Uint8Array() },
    { path: 'ü', content: Uint8Array.of(1) },
  ];
  const unpacked = unpackFiles(packFiles(files));
  expect(unpacked.map(({ path, content }) => [path, [...content]])).toEqual(
    files.map(({ path, content }) => [path, [...content]]),
  );
  expect(unpackFiles(packFiles([]))).toEqual([]);
});
