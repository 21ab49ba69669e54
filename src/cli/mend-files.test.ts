import {
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { loadCourse } from './load-course.ts';
import { mendFiles } from './mend-files.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-mend-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));

const inWork = (...names: string[]) => path.join(work, ...names);

test('a game file keeps its encoding, a file its mode, a link its target', async () => {
  mkdirSync(inWork('chapters'));
  mkdirSync(inWork('games'));
  writeFileSync(inWork('course.yaml'), 'title: A\nside: both\n');
  const chapter =
    '\uFEFF---\r\ntitle: \u00e9\r\n---\r\n\r\n```game file="games/a.pgn"\r\n```\r\n\r\n```moves\r\n4. e4\r\n```\r\n';
  writeFileSync(inWork('real.md'), chapter, { mode: 0o640 });
  symlinkSync('../real.md', inWork('chapters', '1.md'));
  // ISO 8859-1, as section 4.1 of the PGN standard has it.
  const game = '[White "M\u00fcller \u0080"]\n\n7. e4 e5 *\n';
  writeFileSync(inWork('games', 'a.pgn'), Buffer.from(game, 'latin1'));

  expect(await mendFiles(work, (await loadCourse(work)).diagnostics)).toBe(2);

  expect(readFileSync(inWork('games', 'a.pgn'))).toEqual(
    Buffer.from(game.replace('7.', '1.'), 'latin1'),
  );
  expect(readFileSync(inWork('real.md'), 'utf8')).toBe(chapter.replace('4.', '1.'));
  expect(statSync(inWork('real.md')).mode & 0o777).toBe(0o640);
  expect(lstatSync(inWork('chapters', '1.md')).isSymbolicLink()).toBe(true);
  expect((await loadCourse(work)).diagnostics.flatMap(({ fixes }) => fixes ?? [])).toEqual([]);
});
