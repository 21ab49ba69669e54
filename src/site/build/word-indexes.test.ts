import { expect, test } from 'vitest';
import { packFiles } from './pack-files.ts';
import { wordIndexes } from './word-indexes.ts';

/** What each part would be made of anew, by its name, for chapters with these words. */
async function inputsOf(chapters: Readonly<Record<string, string>>) {
  const all = Object.entries(chapters);
  const words = wordIndexes('en', all.length);
  for (const [id, html] of all) {
    words.add({ id, number: 1, title: id, card: '', html, sections: [], met: {} });
  }
  const inputs = new Map<string, string>();
  const paths: string[] = [];
  const files = words.files(async (kind, given) => {
    inputs.set(kind, given.join());
    return packFiles([{ path: 'x', content: Buffer.from(kind) }]);
  });
  for await (const { path } of files) paths.push(path);
  return { inputs, paths };
}

const chaptersOf = (count: number) =>
  Object.fromEntries(Array.from({ length: count }, (_, index) => [`chapter-${index}`, 'Words.']));

test('a course of less than two hundred chapters has one index, a longer one more', async () => {
  expect((await inputsOf(chaptersOf(199))).paths).toEqual(['pagefind/x']);
  expect((await inputsOf(chaptersOf(300))).paths).toEqual([
    'pagefind/x',
    'pagefind/part-2/x',
    'pagefind/part-3/x',
  ]);
});

test('a chapter that changes, or is put in before all others, costs one part', async () => {
  const chapters = chaptersOf(350);
  const { inputs } = await inputsOf(chapters);
  for (const now of [
    { ...chapters, 'chapter-7': 'Others.' },
    { foreword: 'Words.', ...chapters },
  ]) {
    const after = await inputsOf(now);
    const changed = [...inputs].filter(([kind, given]) => after.inputs.get(kind) !== given);
    expect(changed).toHaveLength(1);
  }
});
