import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeEach, expect, test } from 'vitest';
import { chapterIds } from '../../addresses/index.ts';
import type { ChangeToWrite, LookAnswer, WriteAnswer } from '../../contract/index.ts';
import { courseOf } from '../../model/testing/course-of.ts';
import type { LoadedCourse } from '../../pipeline/index.ts';
import { writeRoutes } from './index.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-writing-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));

const file = 'chapters/1.md';
const chapter = '# Words\r\n\r\n```moves\r\n1. d4 d5 2. c4 e6 {Solid.} 3. Nc3\r\n```\r\n';
let folder: string;
const full = () => path.join(folder, file);
const written = () => readFileSync(full(), 'utf8');

/** A `dev` that follows the file as its watcher would. */
function desk() {
  let version = 1;
  const read = () => {
    const text = written().replace(/^\uFEFF/, '');
    const loaded = { course: courseOf({ [file]: text }), textOf: () => text };
    return { loaded: loaded as unknown as LoadedCourse, version };
  };
  let now = read();
  const routes = writeRoutes({ folder, shown: () => now });
  const at = (san: string) => {
    const [own] = now.loaded.course.chapters;
    const [block] = own?.blocks ?? [];
    if (!own || !block) throw new Error('a chapter with a block');
    const node = block.nodes.findIndex(({ move }) => move?.san === san);
    return { version, chapter: own.id, at: chapterIds(own).ofNode(block, node) };
  };
  return {
    routes,
    at,
    follow() {
      version++;
      now = read();
    },
    look: async (san: string, moves: readonly string[] = []) =>
      (await routes.look?.({ ...at(san), moves })) as LookAnswer,
    async write(san: string, change: ChangeToWrite) {
      const { text } = await this.look(san);
      return (await routes.write?.({ ...at(san), text, change })) as WriteAnswer;
    },
  };
}

beforeEach(() => {
  folder = mkdtempSync(path.join(work, 'course-'));
  mkdirSync(path.join(folder, 'chapters'));
  writeFileSync(full(), chapter);
});

const c6: ChangeToWrite = {
  kind: 'line',
  moves: [
    { san: 'c6', option: true, comment: 'The Slav.' },
    { san: 'Nf3', name: 'slav', title: 'A "wall"' },
  ],
};

test('a line is written where it belongs, taken back and made again; mark, mode and line ends stay', async () => {
  writeFileSync(full(), `\uFEFF${chapter}`);
  chmodSync(full(), 0o640);
  const { write, routes, look, follow, ...rest } = desk();
  const all = { write, routes, look, follow, ...rest };
  const before = await all.look('c4');
  expect(before).toMatchObject({
    file,
    line: 4,
    next: ['2...e6'],
    number: 2,
    side: 'white',
    history: {},
  });
  expect(await all.write('c4', c6)).toMatchObject({ file, line: 5, history: { undo: 'c6 Nf3' } });
  const after = `\uFEFF${chapter.replace(
    '{Solid.} 3.',
    '{Solid.}\r\n  ( 2... c6 {:option[] The Slav.} 3. Nf3 {:here[slav "A ”wall”"]} )\r\n3.',
  )}`;
  expect(written()).toBe(after);
  expect(statSync(full()).mode & 0o777).toBe(0o640);
  expect(readdirSync(path.join(folder, 'chapters'))).toEqual(['1.md']);
  expect(await routes.undo?.({})).toMatchObject({ file, history: { redo: 'c6 Nf3' } });
  expect(written()).toBe(`\uFEFF${chapter}`);
  expect(await routes.redo?.({})).toMatchObject({ history: { undo: 'c6 Nf3' } });
  expect(written()).toBe(after);
});

test('a file that was changed meanwhile is left as it is', async () => {
  const own = desk();
  const { text } = await own.look('c4');
  writeFileSync(full(), chapter.replace('Solid.', 'Most solid.'));
  const asked = { ...own.at('c4'), text, change: c6 };
  await expect(own.routes.write?.(asked)).rejects.toThrow('was changed meanwhile');
  own.follow();
  // The page is of the text before.
  await expect(own.routes.write?.({ ...asked, version: 2 })).rejects.toThrow(
    'was changed meanwhile',
  );
  await expect(
    own.routes.look?.({ version: 1, chapter: asked.chapter, at: asked.at, moves: [] }),
  ).rejects.toThrow('since this page was made');
  expect(written()).toContain('{Most solid.} 3. Nc3');
  await own.write('c4', c6);
  writeFileSync(full(), `${written()}\r\nMore.\r\n`);
  await expect(own.routes.undo?.({})).rejects.toThrow('was changed meanwhile');
  expect(written()).toContain('More.');
  rmSync(full());
  await expect(own.routes.undo?.({})).rejects.toThrow();
});

test('what makes no sense, or would be read as something else, is not written', async () => {
  const own = desk();
  const refused = (change: unknown) => expect(own.write('c4', change as ChangeToWrite)).rejects;
  await refused({ kind: 'line', moves: [{ san: 'Ke5' }] }).toThrow('is no legal move here');
  await refused({ kind: 'line', moves: [{ san: 'e6' }] }).toThrow('all these moves already');
  await refused({ kind: 'words', name: 'two words' }).toThrow('is no name for a position');
  await refused({ kind: 'words', claims: ['mate] :end[x'] }).toThrow(
    'cannot stand in the brackets',
  );
  await refused({ kind: 'words', comment: ' ' }).toThrow('Nothing is said');
  await refused({ kind: 'words', comment: 'x](pos:' }).toThrow('could not be read again');
  await refused({ kind: 'delete' }).toThrow('nothing that can be written');
  await refused({ kind: 'words', file: '../../x' }).toThrow('nothing that can be written');
  const elsewhere = { version: 1, moves: [], chapter: '1', at: 'nowhere' };
  await expect(own.routes.look?.(elsewhere)).rejects.toThrow('no block of the chapter');
  expect(written()).toBe(chapter);
});

test('a name that is taken is refused, with its place; a named position that is met is told', async () => {
  writeFileSync(full(), chapter.replace('{Solid.}', '{:here[qgd] Solid.}'));
  const before = written();
  const own = desk();
  const refused = (change: ChangeToWrite) => expect(own.write('c4', change)).rejects;
  const taken = 'The name “qgd” is taken: it stands in chapters/1.md, line 4. Choose another.';
  await refused({ kind: 'words', name: 'qgd' }).toThrow(taken);
  await refused({ kind: 'line', moves: [{ san: 'c6' }, { san: 'Nf3', name: 'qgd' }] }).toThrow(
    taken,
  );
  const twice = ['c6', 'Nf3'].map((san) => ({ san, name: 'slav' }));
  await refused({ kind: 'line', moves: twice }).toThrow('Two positions cannot both be “slav”');
  expect(written()).toBe(before);
  const played = ['e6', 'c4', 'd5'];
  const { meetings } = await own.look('d4', [...played, 'Nc3']);
  expect(meetings).toEqual([{ after: 3, name: 'qgd', file, line: 4 }]);
  // What is true is of the position that is shown; what is met, of the whole line.
  const asked = { ...own.at('d4'), moves: played };
  const early = (await own.routes.look?.({ ...asked, shown: 1 })) as LookAnswer;
  expect(early.meetings).toEqual(meetings);
  expect(early.claims).toEqual((await own.look('d4', ['e6'])).claims);
  const line = played.map((san) => ({ san, ...(san === 'd5' && { same: 'qgd' }) }));
  await own.write('d4', { kind: 'line', moves: line });
  expect(written()).toContain('( 1... e6 2. c4 d5 {:same[qgd]} )');
});
