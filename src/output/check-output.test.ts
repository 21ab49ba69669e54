/** Where an output may be written: never where it would take the course with it. */
import { mkdirSync, mkdtempSync, realpathSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { checkOutputFile, OutputError, prepareOutput } from './index.ts';

const work = realpathSync(mkdtempSync(path.join(tmpdir(), 'output-')));
const at = (...names: string[]) => path.join(work, ...names);
const course = at('parent', 'course');
const marker = (folder: string) => writeFileSync(path.join(folder, 'linewright.json'), '{}');

beforeAll(() => {
  for (const name of ['chapters', 'media/deep', 'site', 'letters/1']) {
    mkdirSync(path.join(course, name), { recursive: true });
  }
  for (const name of ['empty', 'elsewhere', 'foreign', 'parent-site', 'kept/games']) {
    mkdirSync(at(name), { recursive: true });
  }
  writeFileSync(path.join(course, 'course.yaml'), 'title: One\nside: white\n');
  // A folder that a build once published to is replaceable by itself.
  for (const name of ['parent', 'parent/course', 'parent/course/chapters', 'elsewhere']) {
    marker(at(name));
  }
  marker(path.join(course, 'media/deep'));
  writeFileSync(at('foreign/thesis.txt'), 'years of work');
  writeFileSync(at('file'), '');
  symlinkSync(at('parent'), at('to-parent'));
  symlinkSync(course, at('to-course'));
  symlinkSync(at('elsewhere'), at('to-elsewhere'));
  symlinkSync(at('nowhere'), at('to-nowhere'));
  symlinkSync(at('kept/games'), path.join(course, 'games'));
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

describe('a folder is refused', () => {
  test.each([
    ['that contains the course', at('parent'), course],
    ['that contains the course, from inside it', `${course}/..`, course],
    ['that contains the course, by a link', at('to-parent'), course],
    ['that contains a course named by a link', at('parent'), at('to-course')],
    ['that is the root of all', '/', course],
    ['that is the course', course, course],
    ['that is the course, by a link', at('to-course'), course],
    ['that is the course, named by a link', course, at('to-course')],
    ['among the chapters', path.join(course, 'chapters'), course],
    ['below the media', path.join(course, 'media/deep'), course],
    ['below the news, which are not there yet', path.join(course, 'news/x'), course],
    ['where a linked source leads', at('kept/games'), course],
    ['around where a linked source leads', at('kept'), course],
    ['that is a file', at('file'), course],
    ['that is a link to nowhere', at('to-nowhere'), course],
    ['below a link to nowhere', at('to-nowhere/site'), course],
    ['that holds something else', at('foreign'), course],
    ['that holds something else, for a letter of no course', at('foreign'), undefined],
  ])('%s', async (_, out, of) => {
    await expect(prepareOutput(out, of)).rejects.toThrow(OutputError);
  });

  test('with what is in the way and what to do', async () => {
    await expect(prepareOutput(at('parent'), course)).rejects.toMatchObject({
      message: `the folder ${at('parent')} contains the course, which would be lost`,
      hint: 'name another folder with --out',
    });
    await expect(prepareOutput(path.join(course, 'media/deep'), course)).rejects.toMatchObject({
      message: `the folder ${course}/media/deep lies where the course is read from (media)`,
    });
  });
});

test('a link in the course leads out of it only where the user names it', async () => {
  const linked = path.join(course, 'linked-site');
  symlinkSync(at('elsewhere'), linked);
  await expect(prepareOutput(linked, course, true)).rejects.toMatchObject({
    message: `${linked} is a link, or lies behind one, that leads out of the course`,
  });
  await expect(prepareOutput(path.join(linked, '1'), course, true)).rejects.toThrow(OutputError);
  expect(await prepareOutput(linked, course)).toBe(at('elsewhere'));
  expect(await prepareOutput(path.join(course, 'site'), course, true)).toBe(`${course}/site`);
});

test.each([
  ['that is empty', at('empty'), at('empty')],
  ['that an earlier build wrote', at('elsewhere'), at('elsewhere')],
  ['by the link that leads to it', at('to-elsewhere'), at('elsewhere')],
  ['that is not there yet', at('new/er/site'), at('new/er/site')],
  ['that is not there yet, below a link', at('to-elsewhere/site'), at('elsewhere/site')],
  ['in the course', path.join(course, 'site'), path.join(course, 'site')],
  ['whose name begins as a source does', path.join(course, 'chapters-2'), `${course}/chapters-2`],
  ['beside the course, named as it is and more', at('parent/course-2'), at('parent/course-2')],
])('a folder is taken %s', async (_, out, real) => {
  expect(await prepareOutput(out, course)).toBe(real);
});

describe('an exported file', () => {
  test.each(['course.yaml', 'chapters/1.md', 'games/x.pgn', 'news/2026-11-26.md'])(
    'is refused among the sources: %s',
    async (name) => {
      await expect(checkOutputFile(path.join(course, name), course)).rejects.toThrow(OutputError);
    },
  );
  test.each(['course.pgn', 'media/course.pgn', '../course.epub'])('may be %s', async (name) => {
    await checkOutputFile(path.join(course, name), course);
  });
});
