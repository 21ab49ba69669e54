import type { IndexFile } from './word-index.ts';

/** Files as one: a line of JSON with their paths and lengths, then their bytes. */
export function packFiles(files: readonly IndexFile[]): Uint8Array {
  const list = files.map(({ path, content }) => [path, content.length]);
  return Buffer.concat([
    Buffer.from(`${JSON.stringify(list)}\n`),
    ...files.map(({ content }) => content),
  ]);
}

/** Unpacks a pack, which its keeper has checked. */
export function unpackFiles(pack: Uint8Array): IndexFile[] {
  let at = pack.indexOf(0x0a) + 1;
  const list = JSON.parse(Buffer.from(pack.subarray(0, at)).toString('utf8')) as [string, number][];
  return list.map(([path, length]) => {
    at += length;
    return { path, content: pack.subarray(at - length, at) };
  });
}
