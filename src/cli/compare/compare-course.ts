import { setFlagsFromString } from 'node:v8';
import { sideOfPlayer } from '../../lookup/games/index.ts';
import { assignAddresses } from '../../render/index.ts';
import { makeCourseTable } from '../../site/render/course-table.ts';
import { exitCodes, stderr, stdout } from '../console.ts';
import { loadForReaders } from '../load-course.ts';
import type { CompareOptions } from './compare-formats.ts';
import { createTextReport } from './compare-report.ts';
import { createJsonReport } from './compare-report-json.ts';
import { comparedGames } from './compared-games.ts';
import type { ComparedCourse } from './comparison.ts';

/** What became of a comparison; after `no-game` another course would not help. */
export type Compared = 'sound' | 'broken-games' | 'course-errors' | 'no-game';

export const codeOf: Readonly<Record<Compared, number>> = {
  sound: exitCodes.clean,
  'broken-games': exitCodes.findings,
  'course-errors': exitCodes.findings,
  'no-game': exitCodes.failed,
};

/**
 * Compares games with one course.
 * @param beginning of its JSON, up to its first field; by default that of JSON which stands by itself.
 */
export async function compareCourse(
  file: string,
  folder: string,
  { format, player = '', all }: CompareOptions,
  beginning?: string,
): Promise<Compared> {
  // Games are short-lived: V8 would take 130 MB for new objects and be no faster.
  setFlagsFromString('--semi-space-growth-factor=1');
  const loaded = await loadForReaders(folder);
  if (!loaded.checked) {
    stderr.printFindings(loaded);
    stderr.print`Nothing was compared: the course has errors.\n`;
    return 'course-errors';
  }
  const table = makeCourseTable(loaded.course, assignAddresses(loaded.course));
  const compared: ComparedCourse = { table, course: loaded.course, player };
  const report =
    format === 'json' ? createJsonReport(compared, beginning) : createTextReport(compared, { all });
  const sideOf = sideOfPlayer(table, player);
  const seen = { games: 0, mine: 0, otherSide: 0, broken: 0 };
  for await (const games of comparedGames(file, table)) {
    let ready = '';
    for (const game of games) {
      seen.games++;
      const side = sideOf(game);
      if (side === 'other') seen.otherSide++;
      if (side !== 'course') continue;
      seen.mine++;
      if (game.kind === 'broken') seen.broken++;
      ready += report.add(game);
    }
    if (ready !== '') stdout.printLines(ready);
    await stdout.drained();
  }
  const name = file === '-' ? 'the standard input' : file;
  if (seen.games === 0) {
    stderr.print`No game was found in ${name}. It should be PGN: tags such as [White "…"] and moves.\n`;
    return 'no-game';
  }
  if (player !== '' && seen.mine + seen.otherSide === 0) {
    stderr.print`No game in ${name} has a player named ${player}.\n`;
    return 'no-game';
  }
  stdout.printLines(report.end(seen.otherSide));
  return seen.broken > 0 ? 'broken-games' : 'sound';
}
