import { UserError } from '../../diagnostics/index.ts';
import type { OpenShelf } from '../../pipeline/shelf/index.ts';
import { command } from '../called-as.ts';

/**
 * A shelf all of whose folders are courses.
 * @throws UserError where one is not: nobody should take the answer of a part for that of all.
 */
export function readableShelf(shelf: OpenShelf): OpenShelf {
  const [problem] = shelf.files.problems;
  if (problem === undefined) return shelf;
  const { place, message, hint } = problem;
  throw new UserError(
    `${place.file}:${place.start.line}:${place.start.column}: ${message.replace(/\.$/, '')}`,
    `${hint} \`${command('check', shelf.folder)}\` tells all that is wrong with the shelf`,
  );
}
