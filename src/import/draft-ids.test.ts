import { expect, test } from 'vitest';
import { buildCourse } from '../model/index.ts';
import { createArchiveReader } from '../movetext/index.ts';
import { readCourse } from '../read/index.ts';
import { makeDraft } from './make-draft.ts';

test('an id that YAML would read as a number or a truth value is a text', async () => {
  const titles = ['4e-4', '0x10', 'true', 'null', '12', '1-2'];
  const games = titles
    .map((title) => `[Chapter "${title}"]\n[White "?"]\n\n1. e4 e5 *\n`)
    .join('\n');
  async function* parts() {
    const reader = createArchiveReader();
    yield* reader.push(new TextEncoder().encode(games));
    yield* reader.end();
  }
  const { files } = await makeDraft(parts(), { by: 'game', side: 'both', title: 'x' });
  const of = (folder: string) => files.filter(({ path }) => path.startsWith(folder));
  const course = buildCourse(
    readCourse({ chapters: of('chapters/'), games: [], media: [], problems: [] }),
  );
  expect(course.chapters.flatMap(({ problems }) => problems)).toEqual([]);
  expect(course.chapters).toHaveLength(titles.length);
});
