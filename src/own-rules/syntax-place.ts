import { spawnSync } from 'node:child_process';
import { lineStarts, type Point } from '../diagnostics/index.ts';
import type { SourceFile } from '../read/index.ts';

/**
 * Where code cannot be parsed: Node says so to whoever asks it to look at a file, and not in the error of an import.
 * @returns undefined for a file that can be parsed.
 */
export function syntaxPlace({ text }: SourceFile): Point | undefined {
  const { stderr } = spawnSync(process.execPath, ['--check', '--input-type=module', '-'], {
    input: text,
    encoding: 'utf8',
    timeout: 10_000,
  });
  // `[stdin]:3`, the line, and signs below it.
  const [, line, spaces] = /^\[stdin\]:(\d+)\n.*\n( *)\^/.exec(stderr) ?? [];
  if (line === undefined) return undefined;
  const column = (spaces?.length ?? 0) + 1;
  const offset = (lineStarts(text)[Number(line) - 1] ?? 0) + column - 1;
  return { line: Number(line), column, offset };
}
