/** `linewright changes` and git: editions are read from revisions of a course that is a subfolder. */
import { execFileSync, spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { beforeAll, beforeEach, describe, expect, inject, test, vi } from 'vitest';
import { type ChangesOptions, changes } from '../../src/cli/changes.ts';
import { loadCourse } from '../../src/cli/load-course.ts';
import { NoCourseError } from '../../src/read/index.ts';

let work: string;
let course: string;

const chapter = (moves: string) => `---\ntitle: One\n---\n\n\`\`\`moves\n${moves}\n\`\`\`\n`;
const write = (moves: string) =>
  writeFileSync(path.join(course, 'chapters/1-één.md'), chapter(moves));

function git(folder: string, ...args: readonly string[]): void {
  const who = ['-c', 'user.name=A', '-c', 'user.email=a@example.org', '-c', 'commit.gpgsign=false'];
  execFileSync('git', ['-C', folder, ...who, ...args], { stdio: 'pipe' });
}

/** Runs the command in this process, as the program does. */
async function run(
  before: string,
  after: string,
  folder?: string,
  options?: Partial<ChangesOptions>,
) {
  const out = vi.spyOn(process.stdout, 'write').mockReturnValue(true);
  const err = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
  const saidTo = ({ mock }: typeof out) => mock.calls.map(([text]) => String(text)).join('');
  try {
    const all = { format: 'text', write: false, date: '2026-11-25', ...options } as const;
    const status = await changes(before, after, folder, all);
    return { status, stdout: saidTo(out), stderr: saidTo(err) };
  } catch (error) {
    if (!(error instanceof NoCourseError)) throw error;
    return { status: 2, stdout: saidTo(out), stderr: error.message };
  } finally {
    out.mockRestore();
    err.mockRestore();
  }
}

beforeAll(() => {
  work = mkdtempSync(path.join(inject('runFolder'), 'revisions-'));
  const repository = path.join(work, 'repository');
  course = path.join(repository, 'courses', 'small');
  mkdirSync(path.join(course, 'chapters'), { recursive: true });
  mkdirSync(path.join(course, 'media'));
  // The folder of the tests may lie in a repository itself.
  vi.stubEnv('GIT_CEILING_DIRECTORIES', work);
  vi.stubEnv('NO_COLOR', '1');
  git(work, 'init', '-q', repository);
  writeFileSync(path.join(repository, 'README'), 'Not a course yet.');
  git(repository, 'add', '.');
  git(repository, 'commit', '-q', '-m', 'Empty');
  git(repository, 'tag', 'empty');
  writeFileSync(path.join(course, 'course.yaml'), 'title: Small\nid: small\nside: white\n');
  writeFileSync(path.join(course, 'media/a.svg'), '<svg xmlns="http://www.w3.org/2000/svg"/>');
  write('1. e4 e5 2. Nf3');
  git(repository, 'add', '.');
  git(repository, 'commit', '-q', '-m', 'First');
  git(repository, 'tag', 'v1');
  write('1. e4 e5 ( 1... c5 2. c3 ) 2. Nf3');
  git(repository, 'commit', '-q', '-a', '-m', 'Second');
  write('1. e4 e5 ( 1... c5 2. c3 ) 2. Nf3 Nc6 3. Bb5');
});

const covered =
  'One\n  New replies covered\n    after 1.e4: 1...c5, and the answer is 2.c3. (2 new positions)\n';

test('two revisions, a revision and the working tree, two folders', async () => {
  expect(await run('v1', 'HEAD', course)).toEqual({
    status: 0,
    stdout: covered,
    stderr: '',
  });
  expect((await run('HEAD~1', 'HEAD', `${course}/`)).stdout).toBe(covered);
  expect((await run('v1', course)).stdout).toBe(
    `${covered}  Lines that go on\n    after 2.Nf3: 2...Nc6. (2 new positions)\n`,
  );
  expect((await run(course, course)).stdout).toBe('Nothing changed on the board.\n');
  const data = JSON.parse((await run('v1', 'HEAD', course, { format: 'json' })).stdout);
  expect(data.chapters).toHaveLength(1);
});

test('news is written beside the chapters, and never over other news', async () => {
  const write = () => run('v1', course, undefined, { write: true });
  expect((await write()).status).toBe(0);
  expect((await write()).status).toBe(0);
  expect(readdirSync(path.join(course, 'news'))).toEqual(['2026-11-25-2.md', '2026-11-25.md']);
  expect(readFileSync(path.join(course, 'news/2026-11-25.md'), 'utf8')).toMatch(
    /^---\ntitle: "What is new on 25 November 2026"\ndate: 2026-11-25\nfrom: "v1"\n---\n\n## One\n/,
  );
  expect((await run(course, course, undefined, { write: true })).stdout).toMatch(
    /no news was written/,
  );
  expect((await loadCourse(course)).diagnostics).toEqual([]);
});

test('what cannot be compared is told, and nothing is written', async () => {
  const said = async (...args: Parameters<typeof run>) => {
    const { status, stdout, stderr } = await run(...args);
    expect(stdout).toBe('');
    return `${status}: ${stderr.trim()}`;
  };
  expect(await said('v9', 'HEAD', course)).toMatch(
    /^2: v9 is neither a folder with a course nor a rev/,
  );
  expect(await said('--all', 'HEAD', course)).toMatch(/^2: --all is neither a folder/);
  expect(await said('v1', 'HEAD', path.join(work, 'nowhere'))).toMatch(
    /^2: The folder .*nowhere does not exist/,
  );
  expect(await said('empty', 'HEAD', course)).toMatch(
    /^2: The folder courses\/small was no course in empty/,
  );

  const shallow = path.join(work, 'shallow');
  git(work, 'clone', '-q', '--depth', '1', `file://${path.join(work, 'repository')}`, shallow);
  expect(await said('v1', 'HEAD', path.join(shallow, 'courses/small'))).toMatch(
    /^2: v1 is neither .* This clone is shallow.* `git fetch --unshallow --tags`\.$/,
  );

  const outside = path.join(work, 'outside');
  mkdirSync(path.join(outside, 'chapters'), { recursive: true });
  writeFileSync(path.join(outside, 'course.yaml'), 'title: Small\nid: small\nside: white\n');
  writeFileSync(path.join(outside, 'chapters/1.md'), chapter('1. e4 e5 2. Ke3'));
  expect(await said('v1', outside)).toMatch(
    /^2: v1 is no folder, and .*outside is in no git repository/,
  );
  expect(await said(course, outside, undefined, { write: true })).toMatch(
    /^1: .*2\.Ke3 cannot be played.*Nothing was compared/s,
  );
  expect(existsSync(path.join(outside, 'news'))).toBe(false);
});

test('an older edition may have errors by the rules of today', async () => {
  const { status, stdout, stderr } = await run(path.join(work, 'outside'), 'v1', course);
  expect({ status, stderr }).toMatchObject({
    status: 0,
    stderr: expect.stringMatching(/has 1 error by/),
  });
  expect(stdout).toBe('One\n  Lines that go on\n    after 1...e5: 2.Nf3.\n');
});

describe('a revision with what is no plain file', () => {
  let old: string;
  const at = (name: string) => path.join(old, name);
  const outside = () => path.join(work, 'loot.md');

  beforeEach(() => {
    old = mkdtempSync(path.join(work, 'old-'));
    mkdirSync(at('chapters'));
    writeFileSync(at('course.yaml'), 'title: Small\nside: white\n');
    writeFileSync(at('chapters/1.md'), chapter('1. e4 e5 2. Nf3'));
    git(work, 'init', '-q', old);
  });
  const commit = () => {
    git(old, 'add', '.');
    git(old, 'commit', '-q', '-m', 'Old');
  };

  test('links are not followed, into the repository or out of it', async () => {
    writeFileSync(outside(), 'hush');
    writeFileSync(at('aside.md'), 'hush');
    symlinkSync(outside(), at('chapters/2.md'));
    symlinkSync('../aside.md', at('chapters/3.md'));
    symlinkSync('chapters', at('news'));
    commit();
    const { status, stderr } = await run(course, 'HEAD', old);
    expect(status).toBe(1);
    for (const name of ['chapters/2.md', 'chapters/3.md', 'news']) {
      expect(stderr).toContain(`${name}:1:1  error  chapter-unreadable\n  This is a link`);
    }
    expect(stderr).not.toContain('hush');
  });

  test('news is not written through a link', async () => {
    commit();
    const news = mkdtempSync(path.join(work, 'news-'));
    symlinkSync(news, at('news'));
    await expect(run(course, 'HEAD', old, { write: true })).rejects.toThrow(/This is a link/);
    expect(readdirSync(news)).toEqual([]);
  });

  test('its translations are those of the revision', async () => {
    mkdirSync(at('translations/de/chapters'), { recursive: true });
    writeFileSync(at('translations/de/chapters/1.md'), chapter('1. e4 e5 2. Nf3'));
    commit();
    rmSync(at('translations'), { recursive: true });
    writeFileSync(at('chapters/1.md'), chapter('1. e4 e5 2. Nf3 Nc6 3. Bb5'));
    const { stdout } = await run(old, 'HEAD', old, { write: true });
    expect(stdout).toContain(
      'In German readers get it in these words until there is a translations/de/news/',
    );
  });

  test('a file that no course could have is told by its size', async () => {
    writeFileSync(at('chapters/2.md'), Buffer.alloc(11_000_000, 'x'));
    commit();
    const { stderr } = await run(course, 'HEAD', old);
    expect(stderr).toContain('This file has 11.0 MB; a chapter may have 1.0 MB.');
  });

  test('names that lead out of the folder are no files of the course', async () => {
    commit();
    const { stdout } = spawnSync('git', ['-C', old, 'rev-parse', 'HEAD:chapters/1.md'], {
      encoding: 'utf8',
    });
    const object = (type: string, content: Buffer) => {
      const args = ['-C', old, 'hash-object', '-t', type, '-w', '--literally', '--stdin'];
      return execFileSync('git', args, { input: content, encoding: 'utf8' }).trim();
    };
    const tree = (...entries: readonly (readonly [head: string, id: string])[]) =>
      object(
        'tree',
        Buffer.concat(
          entries.flatMap(([head, id]) => [Buffer.from(`${head}\0`), Buffer.from(id, 'hex')]),
        ),
      );
    const blob = stdout.trim();
    const far = tree(['100644 escaped-from-a-revision.md', blob]);
    const up = tree(['40000 ..', far], ['100644 1.md', blob]);
    const chapters = tree(['40000 ..', up], ['100644 1.md', blob]);
    const settings = execFileSync('git', ['-C', old, 'rev-parse', 'HEAD:course.yaml'], {
      encoding: 'utf8',
    }).trim();
    const root = tree(['40000 chapters', chapters], ['100644 course.yaml', settings]);
    const made = execFileSync('git', ['-C', old, 'commit-tree', root, '-m', 'Bad'], {
      encoding: 'utf8',
      env: {
        ...process.env,
        ...{ GIT_AUTHOR_NAME: 'A', GIT_AUTHOR_EMAIL: 'a@example.org' },
        ...{ GIT_COMMITTER_NAME: 'A', GIT_COMMITTER_EMAIL: 'a@example.org' },
      },
    }).trim();
    const loot = path.join(tmpdir(), 'escaped-from-a-revision.md');
    try {
      const { status, stderr } = await run(made, old, old);
      expect(existsSync(loot)).toBe(false);
      expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    } finally {
      rmSync(loot, { force: true });
    }
  });
});
