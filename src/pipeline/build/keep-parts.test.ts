import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { runs } from '../../../tests/setup/runs.ts';
import { type Course, courseId, documentsOf } from '../../model/index.ts';
import { coursePart } from '../../publish/book/index.ts';
import { pgnPart } from '../../publish/pgn/index.ts';
import type { CourseFiles } from '../../read/index.ts';
import { contextOf, freshParts } from '../../render/index.ts';
import { siteParts } from '../../site/index.ts';
import { createWorkspace } from '../../workspace/index.ts';
import { edit, filesOf, moves, settings } from '../../workspace/testing/edits.ts';
import { keepParts } from './keep-parts.ts';

const cache = mkdtempSync(path.join(tmpdir(), 'linewright-parts-'));
// The tests compare by themselves: once is enough.
beforeAll(() => vi.stubEnv('LINEWRIGHT_COMPARE_FRESH', ''));
afterAll(() => {
  vi.unstubAllEnvs();
  rmSync(cache, { recursive: true, force: true });
});

const makersOf = (course: Course) => [
  ...siteParts,
  coursePart(course, undefined),
  pgnPart(undefined),
];

/**
 * What each chapter gives to pages and files, by its file: taken from what was kept where that holds, and the same as
 * what is made of the course afresh.
 * @param folder what it is kept by.
 */
async function partsOf(files: CourseFiles, folder: string) {
  const current = createWorkspace({ frontMatter: 'optional' }).update(files);
  const course = current.course();
  const makers = makersOf(course);
  const parts = await keepParts(course, { cache, folder, makers, ...current });
  const fresh = freshParts(contextOf(course));
  for (const chapter of documentsOf(course)) {
    for (const maker of makers) {
      const [kept, made] = [parts, fresh].map((each) => JSON.stringify(each.of(maker, chapter)));
      if (kept !== made) expect(kept, `${maker.kind} of ${chapter.file}`).toBe(made);
    }
  }
  await parts.save();
  return parts.made();
}

test('whatever is edited, what is kept of a chapter is what is made of it afresh', async () => {
  let folder = 0;
  await fc.assert(
    fc.asyncProperty(fc.array(edit, { minLength: 2, maxLength: 6 }), async (edits) => {
      folder++;
      const texts = new Map<string, string>();
      for (const { file, text, media, side } of edits) {
        if (text === undefined) texts.delete(file);
        else texts.set(file, text);
        const files = filesOf(Object.fromEntries([...texts].sort()), {
          media,
          settings: { ...settings, text: settings.text.replace('white', side) },
        });
        await partsOf(files, String(folder));
      }
    }),
    { numRuns: runs(40) },
  );
});

describe('what is made of a chapter is made again', () => {
  const one = 'chapters/1.md';
  const two = 'chapters/2.md';
  const titled = (title: string, text: string) => `---\ntitle: ${title}\n---\n\n${text}`;
  test.each([
    [
      'where it names a position whose chapter has another title',
      titled('First', moves('1. d4 {:here[a]}')),
      titled('Other', moves('1. d4 {:here[a]}')),
      '[](pos:a) :same[a]',
    ],
    [
      'where a position now stands in another chapter too',
      moves('1. d4 d5 2. c4 c6'),
      moves('1. c4 d5 2. d4 c6'),
      moves('1. d4 d5 2. c4 e6'),
    ],
    ['where a name is gone', moves('1. d4 {:here[a]}'), moves('1. d4'), ':later[a]'],
    [
      'where a diagram before its own is gone',
      '```diagram after="1. d4"\n```',
      'Words.',
      '```diagram after="1. e4"\n```',
    ],
    [
      'where a heading that it links to is gone',
      '## A part',
      '## Another part',
      '[there](1.md#a-part)',
    ],
  ])('%s', async (what, before, after, text) => {
    const filesWith = (first: string) => filesOf({ [one]: first, [two]: text });
    expect(await partsOf(filesWith(before), what)).toEqual([one, two]);
    expect(await partsOf(filesWith(before), what)).toEqual([]);
    expect(await partsOf(filesWith(after), what)).toEqual([one, two]);
    expect(await partsOf(filesWith(before), what)).toEqual([one, two]);
  });

  test.each([
    [
      'where only words of another chapter changed',
      `${moves('1. d4 d5')}Words.`,
      `${moves('1. d4 d5')}Others.`,
    ],
    [
      'where another chapter goes on from a shared beginning',
      moves('1. d4 d5 2. c4 e6'),
      moves('1. d4 d5 2. c4 e6 3. Nc3'),
    ],
  ])('not %s', async (what, before, after) => {
    const filesWith = (first: string) =>
      filesOf({ [one]: first, [two]: moves('1. d4 d5 2. c4 c6 3. Nf3') });
    await partsOf(filesWith(before), what);
    expect(await partsOf(filesWith(after), what)).toEqual([one]);
  });
});

test('a course that looks at itself while it is made is made again after any change', async () => {
  const looking = {
    kind: 'looking',
    inputs: '',
    make: ({ course }: { course: Course }) => courseId(course) + course.chapters[0]?.title,
  };
  const made = async (first: string) => {
    const current = createWorkspace({ frontMatter: 'optional' }).update(
      filesOf({ 'chapters/1.md': first, 'chapters/2.md': 'Words.' }),
    );
    const course = current.course();
    const { print, face } = current;
    const options = { cache, folder: 'looking', makers: [looking], print, face };
    const parts = await keepParts(course, options);
    await parts.save();
    return parts.made().length;
  };
  expect(await made('A.')).toBe(2);
  expect(await made('A.')).toBe(0);
  expect(await made('B.')).toBe(2);
});
