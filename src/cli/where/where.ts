import { existsSync } from 'node:fs';
import { jsonVersion, UserError, writeJson } from '../../diagnostics/index.ts';
import { isShelf } from '../../read/index.ts';
import { command } from '../called-as.ts';
import { count, exitCodes, stderr, stdout } from '../console.ts';
import { findWhere } from './find-where.ts';
import type { WhereOptions } from './where-options.ts';
import { reportWhere } from './where-report.ts';

/**
 * `linewright where`: where a position stands in a course, what is advised there and by which ways it is reached; of
 * one that the course has not, how far it has the moves, and what is nearest. A course with errors is looked through
 * as far as it can be played.
 * @param asked a FEN, its first field, moves with piece letters of the course's language or English ones, or a name.
 * @throws UserError where it is none of them.
 */
export async function where(asked: string, folder: string, options: WhereOptions): Promise<number> {
  if (!existsSync(folder) && existsSync(asked)) {
    throw new UserError(
      `“${asked}” is a folder, and the position comes before the folder`,
      `write \`${command('where', folder, asked)}\``,
    );
  }
  if (await isShelf(folder)) {
    const { whereOnShelf } = await import('../shelf/where-on-shelf.ts');
    return whereOnShelf(asked, folder, options);
  }
  const { answer, errors } = await findWhere(asked, folder, options);
  stdout.printLines(
    options.format === 'json'
      ? writeJson({ version: jsonVersion, ...answer })
      : reportWhere(answer),
  );
  if (errors > 0) {
    stderr.print`The course has ${count(errors, 'error')}, which \`${command('check', folder)}\` tells.\n`;
  }
  return answer.found.length > 0 ? exitCodes.clean : exitCodes.findings;
}
