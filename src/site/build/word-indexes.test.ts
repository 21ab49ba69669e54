import { expect, test } from 'vitest';
import { packFiles } from './pack-files.ts';
import { wordIndexes } from './word-indexes.ts';

/** What each part would be made of anew, by its name, for chapters with these words. */
async function inputsOf(chapters: Readonly<Record<string, string>>) {
  const all = Object.entries(chapters);
  const words = wordIndexes('en', all.length);
  for (const [id, html] of all) {
    const page = () => ({ id, number: 1, title: id, card: '', html, sections: [], met: {} });
    words.add({ id, page });
  }
  const inputs = new Map<string, string>();
  const paths: string[] = [];
  for (const part of words.parts()) {
    const files = await part.files(async (kind, given) => {
      inputs.set(kind, given.join());
      return packFiles([{ path: 'x', content: Buffer.from(kind) }]);
    });
    paths.push(...files.map(({ path }) => path));
  }
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
