import { spawn } from 'node:child_process';
import path from 'node:path';
import parseArguments from 'string-argv';
import { UserError } from '../diagnostics/index.ts';
import { DeskRefusal, type DeskRoute } from './desk-door.ts';

/** The environment variable that names an editor for all courses. */
export const editorVariable = 'LINEWRIGHT_EDITOR';

/** The route by which a page has a file opened. */
export interface EditorRoutes {
  readonly routes: { readonly open: DeskRoute };
}

/**
 * Opens files of a course in the author's own editor. No shell sees the command: it is split into words here, and
 * what is put into them stays within its word.
 * @param command such as `code -g {file}:{line}:{column}`; else what the environment variable says.
 * @param fileOf the file that a page names, from the folder; nothing for what is no file of the course.
 * @returns nothing where no editor is set.
 * @throws UserError for a command that has no place for the file.
 */
export function openInEditor(
  folder: string,
  command: string | undefined,
  fileOf: (file: string) => string | undefined,
): EditorRoutes | undefined {
  const written = command ?? process.env[editorVariable] ?? '';
  const [program, ...words] = parseArguments(written);
  if (program === undefined) return undefined;
  if (!words.some((word) => word.includes('{file}'))) {
    throw new UserError(
      `The editor's command, \`${written}\`, does not say where the file goes`,
      'write it with {file}, and {line} and {column} if it takes them: "code -g {file}:{line}:{column}"',
    );
  }
  return {
    routes: {
      async open(asked) {
        const { file, line, column } = readPlace(asked);
        const found = fileOf(file);
        if (found === undefined) throw new DeskRefusal('The course has no such file.', 404);
        const values = { file: path.resolve(folder, found), line, column };
        await run(
          program,
          words.map((word) =>
            word.replace(/\{(file|line|column)\}/g, (_, name: keyof typeof values) =>
              String(values[name]),
            ),
          ),
        );
      },
    },
  };
}

function readPlace(asked: unknown) {
  const { file, line, column } = (asked ?? {}) as Readonly<Record<string, unknown>>;
  const isCount = (value: unknown): value is number =>
    Number.isSafeInteger(value) && Number(value) > 0;
  if (typeof file !== 'string' || !isCount(line) || !isCount(column)) {
    throw new DeskRefusal('A place is a file, a line and a column.');
  }
  return { file, line, column };
}

/** Settles when the editor has begun: it may stay open for hours. */
function run(program: string, words: readonly string[]): Promise<void> {
  return new Promise((resolve, reject) => {
    const child = spawn(program, words, { stdio: 'ignore', detached: true, shell: false });
    child.once('spawn', () => {
      child.unref();
      resolve();
    });
    child.once('error', ({ message }) =>
      reject(new DeskRefusal(`The editor could not be started: ${message}.`, 500)),
    );
  });
}
