import { realpathSync } from 'node:fs';
import path from 'node:path';

export interface Call {
  /** The program's file as it was named, `process.argv[1]`. */
  readonly script: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly folder: string;
}

/** A command as the user can type it, called as this process was: `linewright`, `npx linewright` or a path. */
export function command(...words: readonly string[]): string {
  return [calledAs(), ...words.map(shellWord)].join(' ');
}

export function calledAs(
  { script, env, folder }: Call = {
    script: process.argv[1] ?? '',
    env: process.env,
    folder: process.cwd(),
  },
): string {
  const name = 'linewright';
  const { npm_command: npm, npm_config_package: from } = env;
  if (npm === 'exec') return from ? `npx --package ${shellWord(from)} ${name}` : `npx ${name}`;
  const isInBin = path.basename(path.dirname(script)) === '.bin';
  // Scripts of package.json find programs that a shell does not.
  if (npm === 'run-script' && isInBin) return `npx ${name}`;
  if (isOnPath(name, script, env.PATH ?? '')) return name;
  const shown = shellWord(relativeName(script, folder));
  return path.extname(script) === '' ? shown : `node ${shown}`;
}

/** Whether a name on the PATH leads to this very file. */
function isOnPath(name: string, script: string, folders: string): boolean {
  const file = real(script);
  const found = folders
    .split(path.delimiter)
    .filter((folder) => folder !== '' && path.basename(folder) !== '.bin')
    .map((folder) => real(path.join(folder, name)))
    .find((each) => each !== undefined);
  return file !== undefined && found === file;
}

function real(file: string): string | undefined {
  try {
    return realpathSync(file);
  } catch {
    // A missing file is not the one that was called.
    return undefined;
  }
}

function relativeName(script: string, folder: string): string {
  const found = path.relative(folder, script);
  if (path.isAbsolute(found) || found.startsWith(path.join('..', '..'))) return script;
  return found.includes(path.sep) ? found : `.${path.sep}${found}`;
}

/** A word of a command line, quoted where a POSIX shell would split it. */
export function shellWord(word: string): string {
  return /^[\w@%+=:,./-]+$/.test(word) ? word : `'${word.replaceAll("'", "'\\''")}'`;
}
