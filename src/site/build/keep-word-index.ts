import type { Keep } from '../index.ts';
import { packFiles, unpackFiles } from './pack-files.ts';
import { startWordIndex, type WordIndex } from './word-index.ts';

/**
 * The index that an earlier build of the same course has made, to which nothing is added; else a new one.
 * The indexer is not started where it is not needed.
 */
export async function keepWordIndex(language: string, keep: Keep): Promise<WordIndex> {
  let filled = () => {};
  const allAdded = new Promise<void>((resolve) => {
    filled = resolve;
  });
  let index: WordIndex | undefined;
  let packed: Promise<Uint8Array> | undefined;
  await new Promise<void>((resolve, reject) => {
    packed = keep('words', [language], async () => {
      index = startWordIndex(language);
      resolve();
      await allAdded;
      return packFiles(await index.files());
    });
    packed.then(() => resolve(), reject);
  });
  return {
    add: async (chapter) => index?.add(chapter),
    async files() {
      filled();
      return packed === undefined ? [] : unpackFiles(await packed);
    },
  };
}
