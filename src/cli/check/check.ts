import { UserError } from '../../diagnostics/index.ts';
import { isShelf } from '../../read/index.ts';
import { count } from '../console.ts';
import { listJudgements } from '../judgements.ts';
import type { CheckOptions } from './check-options.ts';
import { areInDrafts, examine } from './examine.ts';
import { reportFound } from './report-found.ts';

/** `linewright check`: prints all findings of a course; publishes nothing. */
export async function check(
  folder: string,
  { format, fix, judgements = false, claims = false }: CheckOptions,
): Promise<number> {
  if (judgements) {
    if (fix || claims || (format !== 'text' && format !== 'json')) {
      throw new UserError(
        'judgements are only listed',
        'use `--judgements` alone, or with `--format json`',
      );
    }
    return listJudgements(folder, format);
  }
  if (claims && !fix) {
    throw new UserError(
      '`--claims` writes into your files, as `--fix` does',
      'give `--fix --claims`',
    );
  }
  if (await isShelf(folder)) {
    const { checkShelf } = await import('../shelf/check-shelf.ts');
    return checkShelf(folder, { format, fix, claims });
  }
  const { current, textOf, ...made } = await examine(folder, { fix, claims });
  const { diagnostics, chapters, positions } = current;
  return reportFound(
    { diagnostics, textOf, inDrafts: areInDrafts(current), ...made },
    { format, fix, claims, folder },
    `${count(chapters, 'chapter')}, ${count(positions, 'position')}`,
  );
}
