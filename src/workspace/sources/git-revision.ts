import { execFile } from 'node:child_process';
import { access, mkdir, symlink, truncate, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { gamesLimit, NoCourseError } from '../../read/index.ts';

/** Paths that a course is read from; code is none of them, since a revision may come from anywhere. */
const courseFiles =
  /^(?:course\.ya?ml|theme\.css|(?:chapters|pages|games|media|news|facts|translations)(?:\/[^\n]+)?)$/;

/**
 * Writes a course as of a git revision into an empty folder. Pictures are left empty: only their names matter.
 * @throws NoCourseError for a folder outside a repository, or an unknown revision.
 */
export async function writeRevision(revision: string, course: string, into: string): Promise<void> {
  await access(course).catch(() => {
    throw new NoCourseError(`The folder ${course} does not exist. Name the folder of the course.`);
  });
  const git = (args: readonly string[], input?: string) => runGit(course, args, input);
  const inside = await git(['rev-parse', '--show-prefix']);
  if (inside.code !== 0) throw new NoCourseError(whyNoRepository(course, revision, inside.error));
  const prefix = inside.output.toString('utf8').replace(/\r?\n$/, '');
  const found = await git([
    'rev-parse',
    '--verify',
    '--quiet',
    '--end-of-options',
    `${revision}^{commit}`,
  ]);
  const commit = found.output.toString('utf8').trim();
  if (found.code !== 0) throw new NoCourseError(await whyNoRevision(course, revision));

  const tree = await git(['ls-tree', '-r', '-l', '-z', '--full-tree', `${commit}:${prefix}`]);
  const entries = readTree(tree.output.toString('utf8'));
  if (tree.code !== 0 || !entries.some(({ name }) => name === 'course.yaml')) {
    const folder = prefix === '' ? 'The repository' : `The folder ${prefix.replace(/\/$/, '')}`;
    throw new NoCourseError(
      `${folder} was no course in ${revision}: it had no course.yaml. ` +
        'If the course stood elsewhere then, write that revision into a folder with `git worktree add` and name the folder.',
    );
  }
  const contents = await readBlobs(
    git,
    entries.filter(
      ({ name, isLink, size }) => !name.startsWith('media/') && !isLink && size <= gamesLimit,
    ),
  );
  // Links last, so that nothing is written through one.
  for (const entry of [...entries].sort((a, b) => Number(a.isLink) - Number(b.isLink))) {
    const file = path.join(into, ...entry.name.split('/'));
    await mkdir(path.dirname(file), { recursive: true });
    if (entry.isLink) await writeLink(file);
    else {
      await writeFile(file, contents.get(entry.name) ?? '');
      // A hole of the file's size: the reader of the course will complain of it.
      if (entry.size > gamesLimit && !entry.name.startsWith('media/'))
        await truncate(file, entry.size);
    }
  }
}

/** A file of the revision. */
interface TreeEntry {
  readonly name: string;
  /** Of its content. */
  readonly id: string;
  readonly isLink: boolean;
  readonly size: number;
}

/**
 * Parses the output of `ls-tree -r -l -z`. Drops names that lead out of the folder, such as `..`, which a repository made
 * by hand may have.
 */
function readTree(output: string): TreeEntry[] {
  return output.split('\0').flatMap((line) => {
    const [, mode, id = '', size, name = ''] =
      /^(\d+) blob ([0-9a-f]+) +(\d+)\t(.*)$/s.exec(line) ?? [];
    const steps = name.split(/[\\/]/);
    if (!courseFiles.test(name) || steps.some((step) => /^\.{0,2}$/.test(step))) return [];
    return [{ name, id, isLink: mode === '120000', size: Number(size) }];
  });
}

/**
 * Writes a link that leads nowhere in place of one of the revision: courses are read without following links, and the
 * reader will complain of it.
 */
async function writeLink(file: string): Promise<void> {
  // Windows asks a privilege for links; git writes a file there.
  await symlink('a-link-of-that-revision', file).catch((error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPERM') throw error;
    return writeFile(file, '');
  });
}

type Git = (args: readonly string[], input?: string) => Promise<GitResult>;

/** Contents of files by name, read by one process. */
async function readBlobs(git: Git, entries: readonly TreeEntry[]): Promise<Map<string, Buffer>> {
  const asked = entries.map(({ id }) => `${id}\n`).join('');
  const { code, output, error } = await git(['cat-file', '--batch'], asked);
  if (code !== 0) throw new NoCourseError(`git could not read that revision: ${error}`);
  const contents = new Map<string, Buffer>();
  let at = 0;
  for (const { name } of entries) {
    const end = output.indexOf('\n', at);
    const head = output.toString('utf8', at, end);
    at = end + 1;
    const size = Number(/ blob (\d+)$/.exec(head)?.[1] ?? Number.NaN);
    if (Number.isNaN(size)) {
      throw new NoCourseError(`git could not read ${name} of that revision: it says “${head}”.`);
    }
    contents.set(name, output.subarray(at, at + size));
    at += size + 1;
  }
  return contents;
}

interface GitResult {
  readonly code: number;
  readonly output: Buffer;
  readonly error: string;
}

function runGit(folder: string, args: readonly string[], input = ''): Promise<GitResult> {
  return new Promise((resolve, reject) => {
    const child = execFile(
      'git',
      ['-C', folder, ...args],
      { encoding: 'buffer', maxBuffer: Number.POSITIVE_INFINITY },
      (error, output, said) => {
        if (error && error.code === 'ENOENT') {
          const message =
            'To read a revision of a course git is needed, and it is not installed. Install it, or name two folders.';
          reject(new NoCourseError(message));
        } else {
          const code = typeof error?.code === 'number' ? error.code : error ? 1 : 0;
          resolve({ code, output, error: said.toString('utf8').trim() });
        }
      },
    );
    // Ignored: a git that ended early takes no input; its exit code says why.
    child.stdin?.on('error', () => {});
    child.stdin?.end(input);
  });
}

function whyNoRepository(course: string, revision: string, said: string): string {
  if (!/not a git repository/i.test(said)) return `git cannot be used in ${course}: ${said}`;
  return (
    `${revision} is no folder, and ${course} is in no git repository that could have a revision of that name. ` +
    'Name a folder, or the course folder behind the two revisions.'
  );
}

async function whyNoRevision(course: string, revision: string): Promise<string> {
  const shallow = await runGit(course, ['rev-parse', '--is-shallow-repository']);
  const what = `${revision} is neither a folder with a course nor a revision of the repository that ${course} is in.`;
  return shallow.output.toString('utf8').trim() === 'true'
    ? `${what} This clone is shallow, so older revisions are missing: fetch them with \`git fetch --unshallow --tags\`.`
    : `${what} \`git tag\` and \`git log --oneline\` list the revisions.`;
}
