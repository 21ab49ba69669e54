import { jsonVersion, nearestName, UserError, writeJson } from '../../diagnostics/index.ts';
import { type OpenShelf, openShelf, type ShelvedCourse } from '../../pipeline/shelf/index.ts';
import { NoCourseError } from '../../read/index.ts';
import { command } from '../called-as.ts';
import { count, exitCodes, stderr, stdout } from '../console.ts';
import { findWhere } from '../where/find-where.ts';
import type { WhereOptions } from '../where/where-options.ts';
import { reportWhere, type WhereResult } from '../where/where-report.ts';
import { readableShelf } from './readable-shelf.ts';

/** `linewright where` of a shelf: every course that has the position; where none has, the one that has the most of its moves. */
export async function whereOnShelf(
  asked: string,
  folder: string,
  { format, site }: WhereOptions,
): Promise<number> {
  const shelf = readableShelf(await openShelf(folder));
  const found: { course: ShelvedCourse; answer: WhereResult }[] = [];
  let fault: unknown;
  let errors = 0;
  const { courses, words } = askedOf(shelf, asked);
  for (const course of courses) {
    try {
      // Each course has an address of its own below that of the shelf.
      const at = site ?? shelf.files.settings.site;
      const below = at && `${at.replace(/\/+$/, '')}/${encodeURIComponent(course.id)}`;
      const one = await findWhere(words, shelf.folderOf(course), { ...(below && { site: below }) });
      found.push({ course, answer: one.answer });
      errors += one.errors;
    } catch (error) {
      // A name may be another course's.
      if (!(error instanceof UserError) || error instanceof NoCourseError) throw error;
      fault ??= error;
    }
  }
  if (found.length === 0 && fault !== undefined) throw fault;
  const having = found.filter(({ answer }) => answer.found.length > 0);
  const furthest = found.reduce<(typeof found)[number] | undefined>(
    (best, each) => (pliesOf(each) > (best ? pliesOf(best) : 0) ? each : best),
    undefined,
  );
  if (format === 'json') {
    const all = found.map(({ course, answer }) => ({ folder: course.path, ...answer }));
    stdout.printLines(writeJson({ version: jsonVersion, courses: all }));
  } else {
    if (having.length === 0) stdout.print`No course of the shelf has this position.\n`;
    for (const { course, answer } of having.length > 0 ? having : furthest ? [furthest] : []) {
      stdout.print`\nIn ${course.path}:\n`;
      stdout.printLines(reportWhere(answer));
    }
  }
  if (errors > 0) {
    stderr.print`The courses have ${count(errors, 'error')}, which \`${command('check', folder)}\` tells.\n`;
  }
  return having.length > 0 ? exitCodes.clean : exitCodes.findings;
}

/** A name may stand behind the id of its course, as links to it have it: `slav/tabiya`. */
function askedOf({ courses }: OpenShelf, asked: string) {
  const [, id, words] = /^([^\s/]+)\/([^\s/]+)$/.exec(asked) ?? [];
  if (id === undefined || words === undefined) return { courses, words: asked };
  const named = courses.find((course) => course.id === id);
  if (named) return { courses: [named], words };
  const ids = courses.map((course) => course.id);
  const near = nearestName(id, ids);
  throw new UserError(
    `no course of the shelf has the id “${id}”`,
    near ? `did you mean “${near}/${words}”?` : `it has ${ids.join(', ')}`,
  );
}

function pliesOf({ answer }: { readonly answer: WhereResult }): number {
  return answer.known?.plies ?? 0;
}
