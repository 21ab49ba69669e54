import { setFlagsFromString } from 'node:v8';
import { checkOptions, readFacts } from '../../check/index.ts';
import { findGaps, type Gap } from '../../gaps/index.ts';
import { partingOf } from '../../lookup/games/index.ts';
import type { Course } from '../../model/index.ts';
import { assignAddresses } from '../../render/index.ts';
import { makeCourseTable } from '../../site/render/course-table.ts';
import { comparedGames } from '../compare/compared-games.ts';
import { count, exitCodes, stderr, stdout } from '../console.ts';
import { loadCourse } from '../load-course.ts';
import type { GapsOptions } from './gaps-options.ts';
import { reportGapsAsJson, reportGapsAsText } from './gaps-report.ts';

/**
 * `linewright gaps`: the replies that a course lacks, the most wanted first, each with the place to write it.
 * Unreadable games are counted and skipped.
 */
export async function gaps(
  folder: string,
  { format, games = [], atLeast, all }: GapsOptions,
): Promise<number> {
  // Games are short-lived: V8 would take 130 MB for new objects and be no faster.
  setFlagsFromString('--semi-space-growth-factor=1');
  const loaded = await loadCourse(folder);
  if (!loaded.checked) {
    stderr.printFindings(loaded);
    stderr.print`No gaps were looked for: the course has errors.\n`;
    return exitCodes.findings;
  }
  const { course, facts } = loaded;
  const counted = await countReplies(course, games);
  const empty = games.find((file) => !counted.files.has(file));
  if (empty !== undefined) {
    const name = empty === '-' ? 'the standard input' : empty;
    stderr.print`No game was found in ${name}. It should be PGN: tags such as [White "…"] and moves.\n`;
    return exitCodes.failed;
  }
  const read = readFacts(facts).facts;
  const found: readonly Gap[] = findGaps(course, {
    facts: read,
    margin: checkOptions(course.settings).margins.equal,
    games: (key, san) => counted.replies.get(key)?.get(san) ?? 0,
    played: (key) => [...(counted.replies.get(key)?.keys() ?? [])],
    least: atLeast,
  });
  const report = { course, gaps: found, engine: read.size, games: counted.games, all };
  stdout.printLines(format === 'json' ? reportGapsAsJson(report) : reportGapsAsText(report));
  if (counted.broken > 0) {
    stderr.print`${count(counted.broken, 'game')} left out, since they cannot be followed: linewright compare names them.\n`;
  }
  return counted.broken > 0 ? exitCodes.findings : exitCodes.clean;
}

/** How often games left the course by each move, by position key. */
async function countReplies(course: Course, files: readonly string[]) {
  const table = makeCourseTable(course, assignAddresses(course));
  const replies = new Map<string, Map<string, number>>();
  const seen = new Set<string>();
  let games = 0;
  let broken = 0;
  for (const file of files) {
    for await (const some of comparedGames(file, table)) {
      for (const game of some) {
        seen.add(file);
        games++;
        if (game.kind === 'broken') broken++;
        const next = game.kind === 'met' ? game.exit.next : undefined;
        if (game.kind !== 'met' || next === undefined) continue;
        const { leaving } = partingOf(table, game.exit);
        if (leaving !== 'covered' && leaving !== 'known') continue;
        const key = table.positions[game.exit.position]?.key ?? '';
        const there = replies.get(key) ?? new Map<string, number>();
        replies.set(key, there);
        there.set(next.san, (there.get(next.san) ?? 0) + 1);
      }
    }
  }
  return { replies, games, broken, files: seen };
}
