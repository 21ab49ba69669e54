import { UserError } from '../../diagnostics/index.ts';
import type { OpenShelf } from '../../pipeline/shelf/index.ts';
import { command } from '../called-as.ts';

/**
 * Refuses a shelf with a folder that is no course: nobody should take a part's answer for the whole.
 * @throws UserError
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
