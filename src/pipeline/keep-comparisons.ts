import { createHash } from 'node:crypto';
import { codeHash, openLineStore } from '../files/index.ts';
import type { ComparedFile } from '../translation/index.ts';

const mostCourses = 50;

/** Keeps how each translated file compares with its original, so that an edit costs one file in one language. */
export async function keepComparisons(cache: string, course: string) {
  const name = `translated-${createHash('sha256').update(course).digest('hex').slice(0, 16)}`;
  const store = openLineStore(cache, name, {
    sealedFor: await codeHash(),
    mostStores: mostCourses,
  });
  const files = new Set<string>();
  let isNew = false;
  return {
    recall(file: string, print: string, make: () => ComparedFile): ComparedFile {
      files.add(file);
      const line = store.get(file)?.toString('utf8');
      const tab = line?.indexOf('\t') ?? -1;
      if (line !== undefined && line.slice(0, tab) === print) {
        return JSON.parse(line.slice(tab + 1)) as ComparedFile;
      }
      const made = make();
      isNew = true;
      store.set(file, Buffer.from(`${print}\t${JSON.stringify(made)}`));
      return made;
    },
    async save(): Promise<void> {
      if (isNew) await store.save(files);
    },
  };
}
