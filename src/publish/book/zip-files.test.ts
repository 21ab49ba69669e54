/** yazl, which other projects write ZIP files with, is the judge: what it makes of the same files has the same bytes. */
import { buffer } from 'node:stream/consumers';
import fc from 'fast-check';
import { unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { ZipFile } from 'yazl';
import { runs } from '../../../tests/setup/runs.ts';
import { UserError } from '../../diagnostics/index.ts';
import { type PackedFiles, zipBook } from './zip-book.ts';
import { zipFiles } from './zip-files.ts';

const always = { mtime: new Date(1980, 0, 1), mode: 0o100644, forceDosTimestamp: true };

async function byYazl(files: readonly (readonly [path: string, content: Uint8Array])[]) {
  const zip = new ZipFile();
  for (const [path, content] of files) {
    const isStored = path === 'mimetype' || path.endsWith('.png');
    zip.addBuffer(Buffer.from(content), path, { ...always, compressionLevel: isStored ? 0 : 6 });
  }
  zip.end();
  return buffer(zip.outputStream);
}

/** The container as the book has it, in a book of nothing else. */
async function beginning(): Promise<readonly (readonly [string, Uint8Array])[]> {
  return Object.entries(unzipSync(await zipBook([])));
}

const content = fc.oneof(
  fc.uint8Array({ maxLength: 300 }),
  fc.constantFrom('', 'A word. '.repeat(2000), 'Ünïcode ♘').map((text) => Buffer.from(text)),
);

test('whatever is packed, kept or not, has the bytes that yazl makes of it', async () => {
  const first = await beginning();
  const packed: PackedFiles = new Map();
  await fc.assert(
    fc.asyncProperty(
      fc.uniqueArray(fc.tuple(fc.constantFrom('a.xhtml', 'b.png', 'c ♘/é.css', 'd'), content), {
        selector: ([path]) => path,
      }),
      async (files) => {
        const asFiles = files.map(([path, content]) => ({
          path,
          key: `${path} ${Buffer.from(content).toString('hex')}`,
          content: () => content,
        }));
        const judge = await byYazl([
          ...first,
          ...files.map(([path, content]) => [`EPUB/${path}`, content] as const),
        ]);
        expect(Buffer.from(await zipBook(asFiles)).equals(judge)).toBe(true);
        expect(Buffer.from(await zipBook(asFiles, packed)).equals(judge)).toBe(true);
        // The second time each is kept, so none is asked for.
        const kept = asFiles.map((file) => ({ ...file, content: () => expect.unreachable() }));
        expect(Buffer.from(await zipBook(kept, packed)).equals(judge)).toBe(true);
      },
    ),
    { numRuns: runs(40) },
  );
});

const empty = { crc: 0, size: 0, isDeflated: false, bytes: new Uint8Array() };

test('more files than the plain format can count are all found', () => {
  const paths = Array.from({ length: 65_536 }, (_, at) => `${at}.png`);
  const zip = zipFiles(paths.map((path) => [path, empty]));
  expect(Object.keys(unzipSync(zip))).toHaveLength(65_536);
});

test('what is too large for the format is refused', () => {
  expect(() => zipFiles([['a', { ...empty, size: 2 ** 32 }]])).toThrow(UserError);
});
